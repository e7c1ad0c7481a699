"""The science of Agonic on numpy arrays, with no QGIS in it."""
