//! Conductors that are not copper.

use super::cut_flex::CutFlex;
use super::strands;
use crate::domain::check::{Check, Judge, Prospect, always};
use crate::domain::decision::{Probability, Thresholds};
use crate::domain::facts;
use crate::domain::finding::Severity::Breach;
use crate::domain::finding::{Basis, Conformity, Judgement, Reason};
use crate::domain::physics::metal::{Candidate, Pull, Scrape, Signs, mass_resistivity, not_told_apart, resistivity};
use crate::domain::physics::signs::copper;
use crate::domain::question::{Core, Question, Target};
use crate::domain::sample::{Equipment, Place};
use crate::domain::standard::{astm_b566, astm_b869, iec60228};
use crate::domain::view::View;

/// How a magnet takes to the bare strands.
pub const MAGNET: &Question =
    &Question::one("core-magnet", Place::Inside, Equipment::Meters, &["none", "weak", "strong"]).after_cutting();

/// What a strand shows when it is scraped.
pub const SCRAPE: &Question = &Question::one(
    "core-scrape",
    Place::Inside,
    Equipment::Meters,
    &["red", "silver-then-red", "red-then-silver", "silver", "yellow"],
)
.after_cutting();

/// **Finds** cores of copper-clad aluminium, steel or another metal in place of copper.
///
/// **Why it matters** clad aluminium heats more, breaks when it is bent, and works loose in terminals; steel has a tenth of
/// copper's conductance.
///
/// **Source** IEC 60228 knows no flexible conductor of aluminium in these sizes (read); resistivities after ASTM B566 and B869
/// (read); chances of a magnet's or a scrape's answer are usual practice.
///
/// **Decision** by the probability of copper, all metals equally likely beforehand: breaks at 0.05, keeps at 0.95. Only a strong
/// pull means steel. Where nothing speaks against copper and it merely is not proved, the doubt is told and does not decide: the
/// resistance is held to its limit whatever the metal. Signs that no metal explains together never keep the rule, and the doubt
/// counts; they break it only where copper is as unlikely whichever of them was a slip.
pub const METAL_NOT_COPPER: &Check = &Check {
    code: "metal-not-copper",
    place: Place::Inside,
    needs: Equipment::Meters,
    severity: Breach,
    applies: always,
    judge: Judge::Reckoned(judge),
    asks: &[
        MAGNET,
        SCRAPE,
        strands::STRAND_COUNT,
        strands::TEN_STRANDS,
        strands::ONE_STRAND,
        strands::CORE_MASS,
        facts::CORE_RESISTANCE,
        facts::PIECE_LENGTH,
    ],
    against: &[iec60228::COPPER_ONLY, astm_b566::CLASSES, astm_b869::CLASSES],
    prospect: Prospect { minutes: 1.0, percent: 30 },
};

/// So many times likelier than copper another metal must be before the doubt counts.
const SPEAKS_AGAINST_COPPER: f64 = 3.0;

fn judge(view: &View) -> Judgement {
    let flex = CutFlex::of(view);
    let signs = signs(view, &flex);
    if signs == Signs::default() {
        let answers = [MAGNET, SCRAPE].map(|question| view.answer(question, Target::Sample));
        let without = answers.map(|answer| Judgement::without_choice(Breach, answer)).to_vec();
        return Judgement::worst(without, Breach).only_told();
    }
    let ranked = signs.ranked();
    let copper = copper(&ranked);
    let measured = signs.resistivity.is_some() || signs.mass_resistivity.is_some();
    let basis = if measured { Basis::Reading } else { Basis::Sight };
    let contradict = signs.contradict();
    let stands = (measured && !flex.suspected.is_empty()).then(|| {
        let granted = self::signs(view, &flex.granting(&flex.suspected)).ranked();
        Thresholds::USUAL.conformity(self::copper(&granted)) == Conformity::Nonconforming
    });
    let reason = |next, stands| Reason::Metals { candidates: not_told_apart(&ranked), contradict, next, stands };
    match Thresholds::USUAL.conformity(copper) {
        Conformity::Nonconforming => Judgement::breaks(Breach, basis, reason(None, stands)),
        Conformity::Conforms if !contradict => Judgement::conforms(Breach, basis, reason(None, None)),
        Conformity::Conforms | Conformity::Inconclusive | Conformity::NotExamined | Conformity::NotApplicable => {
            let doubt = Judgement::cannot_tell(Breach, reason(signs.best_look(), None));
            if contradict || speaks_against_copper(&ranked, copper) { doubt } else { doubt.only_told() }
        }
    }
}

fn speaks_against_copper(ranked: &[Candidate], copper: Probability) -> bool {
    ranked.first().is_some_and(|best| best.share.value() >= SPEAKS_AGAINST_COPPER * copper.value())
}

/// Everything that speaks of the brown core's metal. The bare mass outdoes strands, which share its resistance.
fn signs(view: &View, flex: &CutFlex) -> Signs {
    let laid = flex.piece.map(strands::length_of_strands);
    let of_core = flex.at_20(Core::Line).zip(laid).filter(|(at_20, _)| at_20.value.value > 0.0);
    let by_mass = of_core.zip(strands::mass(view)).map(|((r, length), mass)| mass_resistivity(r, length, mass));
    let by_size = of_core.zip(strands::strands(view)).map(|((r, length), of)| resistivity(r, length, &of));
    Signs {
        resistivity: if by_mass.is_some() { None } else { by_size },
        mass_resistivity: by_mass,
        pull: match view.one(MAGNET) {
            Some("none") => Some(Pull::None),
            Some("weak") => Some(Pull::Weak),
            Some("strong") => Some(Pull::Strong),
            _ => None,
        },
        scrape: match view.one(SCRAPE) {
            Some("red") => Some(Scrape::Red),
            Some("silver-then-red") => Some(Scrape::SilverThenRed),
            Some("red-then-silver") => Some(Scrape::RedThenSilver),
            Some("silver") => Some(Scrape::Silver),
            Some("yellow") => Some(Scrape::Yellow),
            _ => None,
        },
    }
}
