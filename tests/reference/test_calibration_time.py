"""The timed calibration does what it says; seconds are printed, not judged."""

import calibration_time


def test_ten_numbers_on_forty_measurements(capsys):
    fit, seconds = calibration_time.run()
    with capsys.disabled():
        print(f"\n{calibration_time.line(fit, seconds)}")
    assert len(fit.numbers) == calibration_time.NUMBERS == 10
    assert len(fit.measurements) == calibration_time.MEASUREMENTS == 40
    assert not any(m.held_back for m in fit.measurements)
    assert all(m.record or m.value == 0.0 for m in fit.measurements)
    assert fit.status == "converged"
    assert fit.rms_after() < fit.rms_before()
    assert sum(number.seen for number in fit.numbers) >= 5
    assert len(fit.steels) >= 5
