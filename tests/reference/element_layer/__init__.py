"""The layer with niobium, titanium and nitrogen: records, quantities, fit, page."""
