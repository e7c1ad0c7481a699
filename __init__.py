"""Agonic: field compass readings to a finished geologic map and section."""


def classFactory(iface):
    """Return the plugin that QGIS loads.

    Parameters
    ----------
    iface : QgisInterface or None
        None when QGIS runs without a window, as under ``qgis_process``.
    """
    from .plugin.plugin import AgonicPlugin  # noqa: PLC0415  (QGIS imports the package before it asks for the plugin)

    return AgonicPlugin(iface)
