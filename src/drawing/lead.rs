//! The flex, the sockets, and where to put a meter.

use super::svg::Svg;

/// The print along a flex.
pub fn flex_print() -> String {
    Svg::new(100.0, 24.0, "A flex with print along it: type, number of cores and their size.")
        .line((-20.0, 7.0), (120.0, 7.0), "s")
        .line((-20.0, 17.0), (120.0, 17.0), "s")
        .words((50.0, 14.6), "middle", "H05VV-F 3G1.25 mm²")
        .into_string()
}

/// A cut through a flex of three cores.
pub fn flex_cut() -> String {
    Svg::new(
        100.0,
        40.0,
        "A cut through a flex: sheath, three insulated cores, and the bundle of fine copper wires in each.",
    )
    .circle((34.0, 20.0), 17.0, "s")
    .circle((34.0, 12.0), 6.6, "s")
    .circle((27.0, 24.2), 6.6, "s")
    .circle((41.0, 24.2), 6.6, "s")
    .circle((34.0, 12.0), 3.4, "pin")
    .circle((27.0, 24.2), 3.4, "pin")
    .circle((41.0, 24.2), 3.4, "pin")
    .pointer((38.5, 9.0), (60.0, 7.0), "start", "green and yellow: earth")
    .pointer((46.0, 22.0), (60.0, 17.0), "start", "brown: line")
    .pointer((30.0, 29.5), (60.0, 27.0), "start", "blue: neutral")
    .pointer((47.0, 31.0), (60.0, 37.0), "start", "sheath")
    .into_string()
}

/// One socket from the front.
fn socket(svg: Svg, centre: (f64, f64)) -> Svg {
    let (x, y) = centre;
    svg.rect((x, y), (30.0, 34.0), 3.0, "s")
        .rect((x, y - 9.0), (3.6, 8.0), 0.4, "hole")
        .rect((x - 8.6, y + 7.0), (7.0, 3.6), 0.4, "hole")
        .rect((x + 8.6, y + 7.0), (7.0, 3.6), 0.4, "hole")
}

/// A socket with its three holes named, and what one sees in each.
pub fn socket_face() -> String {
    socket(
        Svg::new(100.0, 42.0, "A UK socket from the front, earth hole up: neutral hole left, line hole right, both closed by shutters; metal shows in the earth hole."),
        (50.0, 21.0),
    )
    .pointer((50.0, 12.0), (74.0, 9.0), "start", "earth: metal shows")
    .pointer((58.6, 28.0), (74.0, 30.0), "start", "line: shuttered")
    .pointer((41.4, 28.0), (26.0, 30.0), "end", "neutral")
    .into_string()
}

/// The lead with a meter from an earth hole to the plug's earth pin.
pub fn earth_reading() -> String {
    wired(
        "A meter between the earth hole of a socket and the earth pin of the plug. The plug is in nothing.",
        "earth hole",
        "earth pin",
        -9.0,
        12.0,
    )
}

/// The lead with a tester from a live hole to a live pin.
pub fn pole_reading() -> String {
    wired(
        "A tester between a lower hole of a socket and a lower pin of the plug. The plug is in nothing.",
        "a lower hole",
        "a lower pin",
        7.0,
        30.0,
    )
}

fn wired(title: &'static str, hole: &str, pin: &str, hole_dy: f64, pin_y: f64) -> String {
    let x_of_hole = if hole_dy < 0.0 { 20.0 } else { 28.6 };
    socket(Svg::new(100.0, 46.0, title), (20.0, 21.0))
        .path("M35 21 q12 10 26 0", "flex")
        .path("M62 6 h12 v30 h-12 z", "s")
        .rect((80.0, 12.0), (12.0, 4.0), 0.4, "pin")
        .rect((78.5, 30.0), (9.0, 4.0), 0.4, "pin")
        .rect((50.0, 40.0), (16.0, 9.0), 1.5, "s")
        .words((50.0, 41.4), "middle", "Ω")
        .line((42.0, 40.0), (x_of_hole, 21.0 + hole_dy), "wire")
        .line((58.0, 40.0), (82.0, pin_y), "wire")
        .words((20.0, 44.5), "middle", hole)
        .words((84.0, 44.5), "middle", pin)
        .into_string()
}
