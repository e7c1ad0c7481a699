"""What QGIS loads and the user touches."""
