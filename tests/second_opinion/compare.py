"""Holds the engine's answers (JSON lines on standard input) and an archive against other people's libraries.

Prints the largest difference of each quantity beside what is allowed, and fails where one is larger, or where nothing was compared.
"""

import base64
import csv
import hashlib
import io
import json
import math
import sys
import zipfile
from collections import defaultdict

import GTC
from cryptography.exceptions import InvalidSignature
from cryptography.hazmat.primitives.asymmetric.ed25519 import Ed25519PrivateKey, Ed25519PublicKey
from fluids.atmosphere import ATMOSPHERE_1976
from ht.conv_free_immersed import Nu_horizontal_cylinder_Churchill_Chu
from scipy.constants import g, sigma
from scipy.optimize import brentq
from scipy.stats import norm
from stdnum import ean

ZERO_CELSIUS = 273.15

# Two orders of the same few operations: some last digits of a double.
ROUNDING = 1e-12

# GTC takes slopes, the engine half the difference at x ± u (GUM 5.1.3, note 2). For 1/x the two differ by the part (u/x)², and no
# doubt that is asked about is above 3 %.
THIRD_ORDER = 0.03**2

# Errors that go together can cancel all but the part √(1 - 0.99²) of the effects, which leaves the same difference in a smaller whole.
THIRD_ORDER_CORRELATED = THIRD_ORDER / math.sqrt(1 - 0.99**2)

# Both take the error function's complement; differences of two probabilities keep the rounding of a number near one.
PROBABILITY = 1e-14

# The engine halves an interval of 1000 K sixty times, the root finder stops at 1e-10 K; both sum in another order.
SOLVER = 1e-7

# The margin that the engine itself keeps: ±30 % of the rise.
MARGIN_OF_RISE = 0.30

# IEC 60287's law is empirical: over cords of 5 to 12 mm it loses from 6 % less (at 6 K) to 28 % more (thin cords in cool rooms) than
# first principles. Loss goes with the power 1.25 of the rise, so this much of it is the engine's margin.
LAW_OF_STILL_AIR = (1 + MARGIN_OF_RISE) ** 1.25 - 1

# A rise of less, in kelvin, harms nothing: the difference of the two laws, large by part where little moves the air, is held against it.
SMALL_RISE = 2.0

# Above this temperature, °C, a rise means "destroyed" and no more.
DESTROYED = 160.0


def relative(found, expected):
    return abs(found - expected) / abs(expected)


def against_gtc(what, found, expected, doubt=THIRD_ORDER):
    yield f"{what}: value", relative(found["value"], expected.x), ROUNDING
    yield f"{what}: doubt", relative(found["u"], expected.u), doubt


def core_over_length(line):
    resistance, length, celsius = (GTC.ureal(*line[name]) for name in ("resistance", "length", "celsius"))
    expected = resistance / (1 + 0.004 * (celsius - 20)) / length
    return against_gtc(line["of"], line["found"], expected)


def cores_joined(line):
    expected = 1 / sum(1 / GTC.ureal(*core) for core in line["cores"])
    return against_gtc(line["of"], line["found"], expected, ROUNDING)


def three_inputs(line):
    a, b, c = (GTC.ureal(*pair) for pair in line["inputs"])
    return against_gtc(line["of"], line["found"], a * b / c)


def four_correlated(line):
    inputs = [GTC.ureal(*pair, independent=False) for pair in line["inputs"]]
    for i, one in enumerate(inputs):
        for j in range(i):
            GTC.set_correlation(line["factors"][i] * line["factors"][j], one, inputs[j])
    a, b, c, d = inputs
    return against_gtc(line["of"], line["found"], a / b * (c - d), THIRD_ORDER_CORRELATED)


def normalised_error(line):
    sample, reference = (GTC.ureal(*pair) for pair in line["inputs"])
    difference, found = sample - reference, line["found"]
    yield f"{line['of']}: difference", abs(found["value"] - difference.x), ROUNDING
    yield f"{line['of']}: doubt", relative(found["u"], difference.u), ROUNDING
    expected = abs(difference.x) / (2 * difference.u)
    yield f"{line['of']}: the two as one", abs(found["normalised"] - expected), ROUNDING
    yield f"{line['of']}: whether they differ", int(found["differs"] != (expected > 1)), 0


def archive(line):
    """The zip file and its tables, as Python's own library reads them."""
    with zipfile.ZipFile(io.BytesIO(base64.b64decode(line["zip"]))) as zipped:
        yield "archive: files with a wrong checksum", int(zipped.testzip() is not None), 0
        found = {name: hashlib.sha256(zipped.read(name)).hexdigest() for name in zipped.namelist()}
        tables = {name: zipped.read(name).decode() for name in found if name.endswith(".csv")}
    files = {name: digest for name, digest in found.items() if "/" in name}
    yield "archive: files that are not what was put in", len(files.items() ^ line["files"].items()), 0
    yield "archive: names beside them", len({*tables, "readme.txt"} ^ (found.keys() - files.keys())), 0
    yield "archive: tables", abs(len(tables) - 3), 0
    for name, text in tables.items():
        head, *rows = csv.reader(io.StringIO(text, newline=""), strict=True)
        yield "archive: rows that are too short or too long", sum(len(row) != len(head) for row in rows), 0
        if name == "index.csv":
            yield "archive: samples in the table", abs(len(rows) - line["samples"]), 0


def conformance(line):
    known = norm(line["value"], line["u"])
    above, below = known.sf(line["low"]), known.cdf(line["high"])
    expected = (above, below, below - known.cdf(line["low"]))
    for found, expected in zip(line["found"], expected, strict=True):
        yield line["of"], abs(found - expected), PROBABILITY


def check_digit(line):
    expected = int(ean.calc_check_digit(line["printed"][:-1]))
    yield line["of"], abs(line["found"] - expected), 0
    yield "whether a number is a barcode's", abs(line["is_valid"] - ean.is_valid(line["printed"])), 0


def by_iec_60287(diameter, rise, _celsius):
    return math.pi * diameter * (0.21 / diameter**0.60 + 3.94) * rise**1.25


def by_first_principles(diameter, rise, celsius):
    """Convection after Churchill and Chu with air at the mean temperature, and radiation of a surface of 0.9."""
    room = celsius + ZERO_CELSIUS
    film = room + rise / 2
    air = ATMOSPHERE_1976(Z=0, dT=film - ATMOSPHERE_1976(Z=0).T)
    viscosity = air.mu / air.rho
    prandtl = 1006.0 * air.mu / air.k
    grashof = g / film * rise * diameter**3 / viscosity**2
    convection = Nu_horizontal_cylinder_Churchill_Chu(Pr=prandtl, Gr=grashof) * air.k / diameter * rise
    radiation = 0.9 * sigma * ((room + rise) ** 4 - room**4)
    return math.pi * diameter * (convection + radiation)


def loss(line):
    given = line["diameter"], line["rise"], line["celsius"]
    yield f"{line['of']}: IEC 60287", relative(line["found"], by_iec_60287(*given)), ROUNDING
    yield f"{line['of']}: first principles", relative(line["found"], by_first_principles(*given)), LAW_OF_STILL_AIR


def settles_at(line, outside):
    """The conductors' temperature in °C at which heat made is heat lost; None where no surface up to 1000 K above the room does it."""
    wire = math.sqrt(4 * 1.7241e-8 / line["each"] / math.pi)
    inside = 5.0 / (4 * math.pi) * math.log(line["diameter"] / min(wire, line["diameter"])) + 0.10

    def conductor(rise):
        return line["celsius"] + rise + inside * outside(line["diameter"], rise, line["celsius"])

    def lost_over_made(rise):
        made = line["current"] ** 2 * 2 * line["each"] * (1 + 0.00393 * (conductor(rise) - 20))
        return outside(line["diameter"], rise, line["celsius"]) - made

    if lost_over_made(1000.0) < 0:
        return None
    return conductor(brentq(lost_over_made, 1e-9, 1000.0, xtol=1e-10))


def warmth(line):
    found, expected = line["found"], settles_at(line, by_iec_60287)
    if found is None or expected is None:
        yield f"{line['of']}: whether they settle", int(found != expected), 0
        return
    yield f"{line['of']}: IEC 60287, K", abs(found - expected), SOLVER
    if expected < DESTROYED:
        rise = settles_at(line, by_first_principles) - line["celsius"]
        difference = abs(found - line["celsius"] - rise) / max(rise, SMALL_RISE)
        yield f"{line['of']}: first principles", difference, MARGIN_OF_RISE


def verifies(public, signature, message):
    try:
        Ed25519PublicKey.from_public_bytes(public).verify(signature, message)
    except InvalidSignature:
        return False
    return True


def seal(line):
    """Reads a sealed page with nothing of the engine's: the block at its end, its digests, and the signature."""
    body, block = line["page"].split('<script type="application/json" id="plugwary-seal">')
    block, ending = block.split("</script>\n")
    said = json.loads(block)
    signature = bytes.fromhex(said.pop("signature"))
    signed = "plugwary-seal 1\n" + json.dumps(said, separators=(",", ":"), ensure_ascii=False)
    secret = Ed25519PrivateKey.from_private_bytes(bytes(line["secret"]))
    public = secret.public_key().public_bytes_raw()
    examination = body.split('id="plugwary-examination">')[1].split("</script>")[0]
    for escape, plain in (("\\u003c", "<"), ("\\u003e", ">"), ("\\u0026", "&")):
        examination = examination.replace(escape, plain)
    digits = base64.b32encode(hashlib.sha256(public).digest()[:15]).decode()
    yield "seal: public key", int(said["key"] != public.hex()), 0
    yield "seal: fingerprint", int(line["found"].replace("-", "") != digits), 0
    yield "seal: page", int(said["page"] != hashlib.sha256(body.encode()).hexdigest()), 0
    yield "seal: examination", int(said["examination"] != hashlib.sha256(examination.encode()).hexdigest()), 0
    yield "seal: signature", int(signature != secret.sign(signed.encode())), 0
    yield "seal: verified", int(not verifies(public, signature, signed.encode())), 0
    yield "seal: not of another text", int(verifies(public, signature, signed.encode() + b" ")), 0
    yield "seal: ending", int(ending != "</body>\n</html>\n"), 0


COMPARISONS = {
    "archive": archive,
    "normalised error": normalised_error,
    "core over length": core_over_length,
    "cores joined": cores_joined,
    "three inputs": three_inputs,
    "four correlated inputs": four_correlated,
    "probability of keeping a limit": conformance,
    "check digit": check_digit,
    "loss to still air": loss,
    "warmth of the conductors": warmth,
    "seal": seal,
}


def main():
    seen, worst = set(), defaultdict(lambda: (0, 0.0, 0.0))
    for line in map(json.loads, sys.stdin):
        seen.add(line["of"])
        for what, difference, allowed in COMPARISONS[line["of"]](line):
            count, largest, _ = worst[what]
            # A difference that is no number must not pass for a small one.
            largest = max(largest, math.inf if math.isnan(difference) else difference)
            worst[what] = count + 1, largest, allowed
    print(f"{'quantity':<46} {'cases':>5} {'largest':>9} {'allowed':>9}")
    for what, (count, largest, allowed) in worst.items():
        print(f"{what:<46} {count:>5} {largest:>9.1e} {allowed:>9.1e}{'' if largest <= allowed else '  TOO LARGE'}")
    missing = COMPARISONS.keys() - seen
    if missing:
        print(f"nothing was asked about: {', '.join(sorted(missing))}")
    return bool(missing) or any(largest > allowed for _, largest, allowed in worst.values())


if __name__ == "__main__":
    sys.exit(main())
