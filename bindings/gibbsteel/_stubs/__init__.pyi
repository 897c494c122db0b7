"""Parts of the stub `_core.pyi`, one for each bind_*.cpp; nothing to import."""
