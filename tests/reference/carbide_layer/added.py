"""Terms that edition 2026-11-25 lacks, and that are added before anything is fitted."""

SILICON = "Coughanowr1994"
NICKEL = "nickel in cementite"
VANADIUM = "vanadium in cementite"
HUANG = "Huang1991FeV"
CITATIONS = {
    HUANG: (
        "W. Huang, A thermodynamic evaluation of the Fe-V-C system (Fe-V part), "
        "Z. Metallkd. 82 (1991) 391-401"
    ),
    SILICON: (
        "C.A. Coughanowr, I. Ansara, H.L. Lukas, Assessment of the Cr-Si system, "
        "Calphad 18 (1994) 125-140, from memory"
    ),
    NICKEL: (
        "own estimate: half as much nickel in cementite as in ferrite at 575 C. That "
        "it is less was seen by atom probe in tempered 4340: A.J. Clarke, M.K. Miller "
        "et al., Acta Materialia 77 (2014) 17"
    ),
    VANADIUM: (
        "own estimate: nine times as much vanadium in cementite as in ferrite at 700 "
        "C, as M. Ko, T. Sakuma, T. Nishizawa found, J. Japan Inst. Met. 40 (1976) "
        "593 (from memory)"
    ),
}


NICKEL_TERM = {
    "on": [["Fe", "Ni"], "C"],
    "order": 0,
    "terms": {"1": 24000},
    "source": NICKEL,
    "kind": "estimated",
    "confidence": "low",
    "note": "without it the file has nickel in M3C as easily as in ferrite",
}
VANADIUM_TERM = {
    "on": ["V", "C"],
    "curves": {"vanadium, body-centred": 3, "carbon, graphite": 1},
    "terms": {"1": -104500},
    "source": VANADIUM,
    "kind": "estimated",
    "confidence": "low",
    "note": "set so that the cementite/ferrite ratio of V is 9 at 973 K; it was "
    "-144000 with the Curie temperature of Fe-V cut short",
}
CURIE_TERM = {
    "on": [["Fe", "V"], "vacancy"],
    "order": 3,
    "terms": {"1": -2169},
    "source": HUANG,
    "kind": "recalled",
    "confidence": "medium",
    "note": "the last of four coefficients, which edition 2026-11-25 left out; "
    "digits from memory",
}


def silicon(value, slope):
    """Of chromium with silicon."""
    return {
        "on": [["Cr", "Si"], "vacancy"],
        "order": 0,
        "terms": {"1": value, "T": slope},
        "source": SILICON,
        "kind": "recalled",
        "confidence": "low",
        "note": "first coefficient of the Cr-Si mixing only; digits from memory",
    }


def hardened_to_1220(steel, **weight_percent):
    """Of the range that edition 2026-11-25 quotes for M1, M7 and M10."""
    return {
        "steel": steel,
        "weight_percent": weight_percent,
        "sense": "at least",
        "solidus_C": 1220,
        "uncertainty_C": 5,
        "source": "HardeningRanges",
        "kind": "published",
        "confidence": "high",
        "note": "Range as for AISI M7; middle of the standard's composition, from "
        "memory.",
    }


def sources():
    fitted = {NICKEL: ["systems/PC-11:Ni"], VANADIUM: ["systems/PC-03"]}
    made = {key: {"citation": citation} for key, citation in CITATIONS.items()}
    for key, records in fitted.items():
        made[key]["fitted_to_check_records"] = records
    return made


def added(title):
    """A layer with these terms.

    @param title  its first entries: format, title, edition, licence
    """
    return {
        **title,
        "sources": sources(),
        "phases": {
            "austenite": {"energy": [silicon(-122850, 9.85)]},
            "ferrite": {
                "energy": [silicon(-104538, 10.7)],
                "curie_temperature": [CURIE_TERM],
            },
            "M3C": {"energy": [NICKEL_TERM, VANADIUM_TERM]},
        },
        "solidus_bounds": [
            hardened_to_1220("AISI M1", C=0.8, Cr=3.8, Mo=8.5, W=1.5, V=1.15),
            hardened_to_1220("AISI M10", C=0.9, Cr=4.0, Mo=8.1, V=2.0),
        ],
    }
