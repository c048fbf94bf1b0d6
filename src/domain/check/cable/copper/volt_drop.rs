//! Voltage lost along the flex at the claimed current.

use super::cut_flex::{CoreResistance, CutFlex};
use crate::domain::check::ruling::against;
use crate::domain::check::{Check, Judge, Prospect, always};
use crate::domain::decision::Limit;
use crate::domain::facts;
use crate::domain::finding::Severity::BadSign;
use crate::domain::finding::{Basis, Conformity, Judgement, Needed, Reason};
use crate::domain::quantity::{ElectricPotential, Measurand, ResistancePerLength};
use crate::domain::question::{Core, Target};
use crate::domain::sample::{Equipment, Place};
use crate::domain::standard::{bs7671_flex, iec60287};
use crate::domain::uncertainty::{Correlation, Measured, combine_correlated, combine2};
use crate::domain::view::View;
use uom::si::temperature_coefficient::per_kelvin;

/// **Finds** a flex so long and thin that it loses more than one volt in twenty.
///
/// **Why it matters** what is lost becomes heat, and motors and heaters run badly.
///
/// **Source** BS 7671 Table 4F3B (read), or the cores as read; 5 % of 230 V is what BS 7671 Appendix 4 allows a whole installation
/// (memory-high). No rule limits a lead.
///
/// **Decision** at the claimed current and 60 °C in the conductors, at p 0.95; a hint, it decides nothing.
pub const VOLT_DROP_HIGH: &Check = &Check {
    code: "volt-drop-high",
    place: Place::Cable,
    needs: Equipment::HandTools,
    severity: BadSign,
    applies: always,
    judge: Judge::Reckoned(|view: &View| judge(&CutFlex::of(view))),
    asks: &[facts::FLEX_LENGTH, facts::FLEX_PRINT, facts::RATING, facts::CORE_RESISTANCE],
    against: &[bs7671_flex::VOLT_DROP, bs7671_flex::TABLE_4F3B],
    prospect: Prospect { minutes: 1.0, percent: 10 },
};

/// Judges the volt drop of a flex, from its cores where they were read, else from its claimed area.
pub fn judge(flex: &CutFlex) -> Judgement {
    let Some(length) = flex.length else { return Judgement::not_examined(BadSign) };
    let Some(current) = flex.current else {
        return Judgement::cannot_tell(BadSign, Reason::Needs(Needed::ClaimedCurrent));
    };
    let claimed = || flex.area.and_then(bs7671_flex::volt_drop).map(Measured::exact);
    let (drop, basis) = match warm_cores(flex) {
        Some(cores) => (Some(cores), Basis::Reading),
        None => (claimed(), Basis::Print),
    };
    let Some(drop) = drop else {
        return Judgement::cannot_tell(BadSign, Reason::Needs(Needed::ClaimedArea));
    };
    let lost: Measured<ElectricPotential> = combine2(drop, length, |drop, length| drop * length * current);
    let evidence = vec![against(Target::Sample, &lost, &Limit::AtMost(bs7671_flex::largest_drop()))];
    let judged = Judgement::by_readings(BadSign, evidence, 1);
    let fits = basis == Basis::Print && judged.outcome == Conformity::Conforms;
    Judgement { basis, reason: if fits { Reason::FitsTheClaim } else { judged.reason }, ..judged }
}

/// Both live cores at 60 °C, out and back. They were read with one meter on one piece in one room: what one is wrong by, the other
/// is too, so their doubts add.
fn warm_cores(flex: &CutFlex) -> Option<Measured<ResistancePerLength>> {
    let read = |core| match flex.core(core)? {
        CoreResistance::Read(measured) => Some(measured),
        CoreResistance::WithLeads { .. } | CoreResistance::Above(_) | CoreResistance::Below(_) => None,
    };
    let warmer = bs7671_flex::conductor().base() - 293.15;
    let warm = 1.0 + iec60287::copper_coefficient().get::<per_kelvin>() * warmer;
    let cores = [read(Core::Line)?, read(Core::Neutral)?];
    Some(combine_correlated(cores, |_, _| Correlation::WHOLE, |[line, neutral]| (line + neutral) * warm))
}
