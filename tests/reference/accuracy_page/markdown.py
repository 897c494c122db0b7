"""Numbers and tables as Markdown."""

from math import isnan


def table(header, rows):
    lines = [header, ["---"] * len(header), *rows]
    return "\n".join("| " + " | ".join(map(str, line)) + " |" for line in lines)


def number(value, digits=2):
    """Fixed places; a dash where there is none; never "-0.00"."""
    if value is None or isnan(value):
        return "-"
    text = f"{value:.{digits}f}"
    return text.lstrip("-") if float(text) == 0.0 else text


def share(part, whole):
    """ "12 of 20 (60 %)" """
    return f"{part} of {whole} ({100.0 * part / whole:.0f} %)" if whole else "none"


def short(value):
    """Three digits, without exponent for usual sizes."""
    if isinstance(value, list):
        return ", ".join(short(v) for v in value)
    if isinstance(value, str):
        return value
    return f"{value:.3g}" if abs(value) < 1000.0 else f"{value:.0f}"
