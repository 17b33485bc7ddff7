//! Reading what people type: plan sentences, times, readings, moves. Word tables come from `locales/*/lexicon.ftl`.
//!
//! Pure: the present and the zone are arguments. Start at [`read_wish`]; every reader takes a [`Ground`] to stand on and
//! begins by taking the text apart ([`sentence`]). Nothing here answers anyone: what cannot be read comes back as a value.

mod air;
mod allergy;
mod aside;
mod beside;
mod bought;
mod bringing;
pub mod command;
mod csv;
mod dial_and_air;
mod digits_apart;
mod diner;
mod dish;
mod dosed;
mod elsewhere;
mod entries;
mod fold;
mod glance;
mod ground;
mod hot_air;
mod icy;
mod in_jest;
mod lexicon;
mod log;
mod meat;
mod new_bird;
mod off_dial;
mod once;
mod other_cooker;
mod party;
mod past;
mod peril;
mod phrases;
mod problem;
mod pull_ahead;
mod put_on;
mod quiet;
mod reheat;
mod retold;
mod retract;
mod score;
pub mod sentence;
mod setting;
mod share;
mod shift;
mod shorthand;
mod slip;
mod step;
mod stuffing;
mod suggestion;
mod talk;
mod told;
mod unwell;
mod verdict;
mod wandering;
mod warm_thaw;
mod went_in;
mod when;
mod will;
mod wish;
pub mod zone;

pub use air::{Air, HeatBack, Since, is_of_power, read_air, read_heat_back, says_burns_on, says_heat_failed};
pub use allergy::{Allergen, read_allergies};
pub use aside::{asks_of_other_things, names_the_bird};
pub use beside::read_job_hour;
pub use bought::{read_bought, says_not_bought, says_packer_salted, says_salted_by_marinade, weighs};
pub use bringing::{DishChange, read_brought, read_dish_change, read_dropped, read_taken_off};
pub use command::{Address, Command, read_command};
pub use csv::{CsvFault, CsvProblem, Table, decode, read_csv, read_table};
pub use dial_and_air::{DialAndAir, read_dial_and_air};
pub use digits_apart::read_digits_apart;
pub(crate) use diner::names_what_is_beside;
pub use diner::{Diner, read_diner, speaks_of_a_meal};
pub use dish::{
    DISH_MINUTES, DishOrder, DishProblem, SHELVES, WishDish, each_dish, is_dish_beside, is_dish_order, is_dish_setting,
    read_dish, read_shelves,
};
pub use dosed::read_dosed;
pub use elsewhere::{names_another_kitchen, says_eaten_at_home, sits_somewhere};
pub use fold::fold;
pub use ground::{Ground, settle};
pub use hot_air::read_hot_air;
pub use icy::read_icy_worry;
pub use in_jest::{only_speaks_of_frying, speaks_of_own_body, tells_of_frost};
pub use lexicon::{Concept, Lexicon};
pub use log::{Log, Place, Reading, Scale, read_log, wants_degrees};
pub use meat::{Meat, names_air, read_lit, read_meat};
pub use new_bird::{NewBird, read_new_bird};
pub use off_dial::{OffDial, Side, read_off_dial};
pub use once::once;
pub(crate) use once::shared;
pub use other_cooker::read_other_cooker;
pub use past::{Happened, read_report_at};
pub use peril::{
    Peril, burns_indoors, feels_fumes, is_bare_fire, is_loud, only_smokes, read_peril, read_peril_abroad, says_peril,
};
pub use problem::Problem;
pub use pull_ahead::read_pull_ahead;
pub use put_on::tells_only_time;
pub use quiet::{Quiet, read_quiet, read_quiet_span};
pub use reheat::{asks_to_reheat, reheats_again, says_into_heat};
pub use retold::{Retold, Telling, read_retold, read_turned_out, read_unsalted};
pub use retract::{Misread, Retraction, puts_a_question, read_misread, read_retraction};
pub use score::tells_a_score;
pub use setting::read_setting;
pub use share::{
    Share, Whose, asks_for_another, asks_own_jobs, asks_what_is_left, asks_whether_done, read_shares, read_takings,
    stranger,
};
pub use shift::{Shift, read_shift, says_an_hour};
pub use slip::{Slip, read_slip};
pub use step::{Answer, asks_another_hour, asks_when_step, asks_who, is_done, names_a_bird, read_answer, read_step};
pub use stuffing::{read_stuffed_in, says_stuffing_out};
pub use suggestion::{Settled, leaning, other_suggestion, settled, settled_in, suggestion};
pub(crate) use talk::is_question_of;
pub use talk::{
    Report, ReportKind, asks_bare_when, asks_for_the_oven, asks_for_the_plan, asks_how_it_goes, asks_if_still_good,
    asks_of_the_dinner, asks_to_eat, asks_to_pull, asks_vaguely, asks_what_is_next, asks_what_now, asks_what_this_is,
    asks_when, asks_whether_enough, asks_who_does_what, asks_who_does_what_on, asks_why_an_hour, asks_why_these_times,
    begins_as_question, cancels, is_assent, is_chatter, is_discard, is_doubting, is_greeting, is_help, is_laughter,
    is_not_so, is_plain_yes, is_so, is_thanks, is_thrown_away, is_undo, is_wordless, opens_as_question, read_language,
    read_put_frozen, read_report, read_unit_system, report_among, report_at_reading, report_beside, says_arrived,
    says_bird_done, says_carving, says_cooked_there, says_frozen_through, says_it_reads_less, says_it_reads_so,
    says_lights_it, says_never_thawed, says_opened_flat, says_oven_cold, says_put_back, says_stuffed, says_thawed,
    says_underdone, settles_a_day, speaks_of_another_year, speaks_of_eating, speaks_of_pink, speaks_of_pulling,
    speaks_of_raw, tells_of_other_years, tells_of_past_weeks, tells_of_pulling, tells_who_may_not,
};
pub use told::Told;
pub use unwell::{Health, Unwell, read_unwell};
pub use verdict::{Verdict, asks_of_last_time, read_verdict};
pub use wandering::{Wandering, read_wandering};
pub use warm_thaw::{WarmThaw, names_water, puts_into_warm_water, read_warm_thaw};
pub use went_in::read_went_in_at;
pub use when::{Lean, When, easter, last_at, read_when};
pub(crate) use will::made_of;
pub use will::{
    Refusal, Willing, is_everything, is_plain_no, is_unwilling, read_cant, read_kind, read_refusal, read_willing,
};
pub use wish::{There, Wish, next_dinner, read_dinner_time, read_wish};
pub use zone::{Zones, read_zone, zone_at};
