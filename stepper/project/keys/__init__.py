"""Read the keys of a project file beside its lines: charts, yarns, gauges, her own lengths and changes."""
