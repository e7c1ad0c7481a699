"""Pictures: map symbols, layer styles, legends and figures."""
