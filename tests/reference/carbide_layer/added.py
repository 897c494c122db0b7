"""Terms that edition 2026-11-25 lacks, and that are added before anything is fitted."""

SILICON = "Coughanowr1994"
NICKEL = "nickel in cementite"
CITATIONS = {
    SILICON: (
        "C.A. Coughanowr, I. Ansara, H.L. Lukas, Assessment of the Cr-Si system, "
        "Calphad 18 (1994) 125-140, from memory"
    ),
    NICKEL: (
        "own estimate: half as much nickel in cementite as in ferrite at 575 C. That "
        "it is less was seen by atom probe in tempered 4340: A.J. Clarke, M.K. Miller "
        "et al., Acta Materialia 77 (2014) 17"
    ),
}


def added(title):
    """A layer with these terms.

    @param title  its first entries: format, title, edition, licence
    """
    recalled = {
        "source": SILICON,
        "kind": "recalled",
        "confidence": "low",
        "note": "first coefficient of the Cr-Si mixing only; digits from memory",
    }

    def silicon(value, slope):
        on = [["Cr", "Si"], "vacancy"]
        return {"on": on, "order": 0, "terms": {"1": value, "T": slope}, **recalled}

    nickel = {
        "on": [["Fe", "Ni"], "C"],
        "order": 0,
        "terms": {"1": 24000},
        "source": NICKEL,
        "kind": "estimated",
        "confidence": "low",
        "note": "without it the file has nickel in M3C as easily as in ferrite",
    }
    return {
        **title,
        "sources": {
            SILICON: {"citation": CITATIONS[SILICON]},
            NICKEL: {
                "citation": CITATIONS[NICKEL],
                "fitted_to_check_records": ["systems/PC-11:Ni"],
            },
        },
        "phases": {
            "austenite": {"energy": [silicon(-122850, 9.85)]},
            "ferrite": {"energy": [silicon(-104538, 10.7)]},
            "M3C": {"energy": [nickel]},
        },
    }

