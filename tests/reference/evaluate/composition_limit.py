"""Largest content of an element in a carbide that borders on another carbide."""

from . import library


def composition_limit(record):
    """Maximum over the steels and temperatures listed where both carbides exist."""
    found = []
    for composition in record["compositions_wt"]:
        for celsius in record["celsius_list"]:
            state = library.soak(record, celsius=celsius, composition=composition)
            there = library.present(state)
            if record["phase"] in there and record["beside"] in there:
                occurrence = there[record["phase"]]
                found.append(occurrence.weight_percent[record["element"]])
    if not found:
        raise library.Absent(f"{record['phase']} never beside {record['beside']}")
    return max(found)
