"""Readings by the million: the main job on GeoParquet, CSV and PostGIS, spread over processes by Dask."""
