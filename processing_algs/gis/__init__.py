"""QGIS to arrays and back: columns, dates, places, sinks, styles of outputs."""
