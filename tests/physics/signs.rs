//! Signs of a metal weighed together: when they contradict each other, what a slip leaves, and which look would tell most.

use plugwary::domain::physics::metal::{MassResistivity, Metal, Pull, Scrape, Signs, Within};
use plugwary::domain::physics::signs::{Look, copper, likeliest_first};
use uom::si::f64::Ratio;
use uom::si::ratio::ratio;

use crate::near::near_part;

/// A mass resistivity of `times` a metal's own, known within `relative`.
fn mass(metal: Metal, times: f64, relative: f64) -> Within<MassResistivity> {
    Within { value: metal.mass_resistivity() * times, relative: Ratio::new::<ratio>(relative) }
}

fn share(signs: &Signs, metal: Metal) -> f64 {
    signs.ranked().into_iter().find(|c| c.metal == metal).unwrap().share.value()
}

/// Three standard deviations are far: stainless steel (6 %) is the last of the metals, and beyond it there is no other.
#[test]
fn a_number_three_deviations_from_every_metal_is_explained_by_none() {
    let beyond = |deviations: f64| {
        let times = (deviations * libm::hypot(0.01, 0.06)).exp();
        Signs { mass_resistivity: Some(mass(Metal::Stainless, times, 0.01)), ..Signs::default() }.contradict()
    };
    assert_eq!((beyond(2.9), beyond(3.1)), (false, true));
}

/// One in twenty brass strands looks silver over red (usual practice), which still explains it; one in a hundred red over silver does not.
#[test]
fn a_sign_that_one_in_twenty_shows_is_explained() {
    let brass = |scrape| Signs {
        mass_resistivity: Some(mass(Metal::Brass, 1.0, 0.025)),
        pull: Some(Pull::None),
        scrape: Some(scrape),
        ..Signs::default()
    };
    assert!(!brass(Scrape::SilverThenRed).contradict());
    assert!(brass(Scrape::RedThenSilver).contradict());
}

/// One of two signs is a slip, either of them. By hand: copper's mass fits it with a density of 1/√(0.025² + 0.015²) = 34.30, and steel's is
/// 10 deviations away. A strong pull: 34.30/3 + 2.04 × 0.002 for copper against 2.04 × 0.89 for steel, 6.299 to 1. A scrape of red
/// over silver: 34.30/5 + 2.04 × 0.01 against 2.04 × 0.75 for clad aluminium, 4.497 to 1.
#[test]
fn either_of_two_signs_may_be_the_slip() {
    let copper = Signs { mass_resistivity: Some(mass(Metal::Copper, 1.0, 0.025)), ..Signs::default() };
    let pulled = Signs { pull: Some(Pull::Strong), ..copper };
    near_part("copper to steel", share(&pulled, Metal::Copper) / share(&pulled, Metal::Steel), 6.299, 1e-3);
    let scraped = Signs { scrape: Some(Scrape::RedThenSilver), ..copper };
    let against_clad = share(&scraped, Metal::Copper) / share(&scraped, Metal::CladAluminium15);
    near_part("copper to clad aluminium", against_clad, 4.497, 1e-3);
}

/// A mass halfway between copper's and that of steel clad to 40 %, known within a fifth: a magnet parts them nine times in ten, a scrape
/// only where the cladding shows.
#[test]
fn a_magnet_parts_copper_from_clad_steel() {
    let signs = Signs { mass_resistivity: Some(mass(Metal::Copper, 1.52, 0.2)), ..Signs::default() };
    assert_eq!(signs.best_look(), Some(Look::Magnet));
}

/// One hair-thin strand reads like clad aluminium, and copper keeps 6 %: weighed, it is settled whatever comes; scraped, four times in five.
#[test]
fn a_mass_settles_oftener_than_a_scrape() {
    let seen = Within { value: Metal::CladAluminium15.resistivity(), relative: Ratio::new::<ratio>(0.24) };
    let signs = Signs { resistivity: Some(seen), pull: Some(Pull::None), ..Signs::default() };
    assert_eq!(signs.best_look(), Some(Look::Mass));
}

/// A doubt between copper, aluminium and clad aluminium that a scrape of silver has left: none of them is pulled, so that a magnet settles
/// nothing and is not named.
#[test]
fn a_look_that_settles_nothing_is_not_named() {
    let signs = Signs {
        mass_resistivity: Some(mass(Metal::Copper, 0.705, 0.15)),
        scrape: Some(Scrape::Silver),
        ..Signs::default()
    };
    assert!(!signs.contradict() && (0.05..0.15).contains(&share(&signs, Metal::Copper)));
    assert_eq!(signs.best_look(), None);
}

/// A mass between copper's and that of clad aluminium, known within a third, and no pull: of the three looks a scrape is left, and only clad
/// strands show red over silver.
#[test]
fn a_scrape_parts_copper_from_clad_aluminium() {
    let signs =
        Signs { mass_resistivity: Some(mass(Metal::Copper, 0.8, 0.33)), pull: Some(Pull::None), ..Signs::default() };
    assert_eq!(signs.best_look(), Some(Look::Scrape));
}

#[test]
fn the_share_of_copper_is_coppers() {
    let signs = Signs { mass_resistivity: Some(mass(Metal::Copper, 0.8, 0.33)), ..Signs::default() };
    let told = copper(&signs.ranked()).value();
    assert!((0.05..0.95).contains(&told) && told.to_bits() == share(&signs, Metal::Copper).to_bits(), "{told}");
}

#[test]
fn equals_stay_as_they_stood() {
    let mut list = [("first", 1.0), ("second", 1.0), ("third", 2.0), ("fourth", 1.0)];
    likeliest_first(&mut list, |one| one.1);
    assert_eq!(list.map(|one| one.0), ["third", "first", "second", "fourth"]);
}
