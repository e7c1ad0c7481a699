"""Everything of Agonic that computes: the science in ``core``, its way into QGIS in the other folders."""
