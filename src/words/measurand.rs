//! What a value is a value of, where the check's own name does not say it.

use crate::domain::finding::Evidence;

/// "width of the earth pin"; empty where the value speaks of a socket or a core, which is named instead.
pub fn measurand(code: &str, evidence: &Evidence) -> &'static str {
    let by_question = evidence.question.map_or("", |question| of_question(question.id));
    if by_question.is_empty() { of_check(code) } else { by_question }
}

/// Of checks that read several things.
fn of_question(id: &str) -> &'static str {
    match id {
        "across-live-pins" => "line to neutral pin, middle to middle",
        "earth-pin-length" => "length of the earth pin",
        "earth-pin-to-far-side" => "earth pin to the other two, middle to middle",
        "earth-pin-width" => "width of the earth pin",
        "fuse-diameter" => "caps of the fuse, across",
        "fuse-length" => "length of the fuse",
        "live-pin-length" => "length of the lower pins",
        "live-pin-width" => "width of the lower pins",
        "pin-thickness" => "thickness of the pins",
        _ => "",
    }
}

/// Of checks that read one thing.
fn of_check(code: &str) -> &'static str {
    match code {
        "creepage-or-clearance-short" => "distance from the mains side to the USB side",
        "diameter-off" => "thickness of the flex",
        "flex-too-long" | "length-overstated" => "length of the flex",
        "fuse-underweight" => "mass of the fuse",
        "insulation-low" => "line and neutral to earth",
        "insulation-thin" => "thickness of the insulation",
        "leakage-high" => "current from what is touched",
        "mass-below-copper-promised" => "area that copper of this mass would have",
        "output-not-isolated" => "USB output to line and neutral",
        "overheats-at-claim" => "current that brings its cores to 70 °C",
        "pin-near-edge" => "lower pin to the edge of the plug",
        "plug-fits-upside-down" => "lower hole to the edge of the body",
        "pole-shorted" => "line to neutral",
        "runs-hot" => "hottest spot",
        "sheath-thin" => "thickness of the outer layer",
        "strand-area-short" => "area of the strands",
        "volt-drop-high" => "voltage lost on the way",
        _ => "",
    }
}
