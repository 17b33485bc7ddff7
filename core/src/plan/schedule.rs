//! What a plan comes to: jobs on the clock, or what stands in the way and what would help.

use super::{Change, Finish, Moment, Reason, Step, Thawing};
use crate::roast::Spread;
use chrono::TimeDelta;

/// Moved further it is another dinner.
const SAME_DINNER: TimeDelta = TimeDelta::hours(8);

/// One job on the clock. `earliest <= at <= latest`.
#[derive(Debug, Clone, PartialEq)]
pub struct Job {
    /// Which step.
    pub step: Step,
    /// Which of several.
    pub nth: u8,
    /// When it is to be done; when it was done, if it was.
    pub at: Moment,
    /// How long it takes or lasts.
    pub lasts: TimeDelta,
    /// No sooner than.
    pub earliest: Moment,
    /// No later than.
    pub latest: Moment,
    /// It has been done.
    pub done: bool,
    /// Why then.
    pub reasons: Vec<Reason>,
}

/// A plan that works.
#[derive(Debug, Clone, PartialEq)]
pub struct Schedule {
    /// Jobs in order of time. What was done stands at its real time; what was skipped or has been overtaken is left out.
    pub jobs: Vec<Job>,
    /// Time over the heat.
    pub cooking: Spread,
    /// When it comes off the heat.
    pub finish: Finish,
    /// Time to spare even if it takes as long as one in ten do.
    pub spare: TimeDelta,
    /// How it is thawed; `None` when there is nothing to thaw.
    pub thawing: Option<Thawing>,
    /// From salting to the heat; `None` without a salted rest.
    pub salted_rest: Option<TimeDelta>,
    /// What the host should know.
    pub cautions: Vec<Caution>,
    /// What must be in the house.
    pub needs: Vec<Need>,
}

impl Schedule {
    /// The job `step`, the `nth` of several.
    pub fn job(&self, step: Step, nth: u8) -> Option<&Job> {
        self.jobs.iter().find(|job| job.step == step && job.nth == nth)
    }

    /// How many jobs of that step there are.
    pub fn count(&self, step: Step) -> usize {
        self.jobs.iter().filter(|job| job.step == step).count()
    }

    /// Whether the bird is off the heat.
    pub fn is_off(&self) -> bool {
        self.job(Step::Pull, 0).is_none_or(|job| job.done)
    }

    /// The first job that is still to be done.
    pub fn next(&self) -> Option<&Job> {
        self.jobs.iter().find(|job| !job.done)
    }
}

/// Something the host should know about a plan that works.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Caution {
    /// The job falls into hours at which people like to be left in peace.
    OddHours(Step),
    /// The job falls into the night.
    AtNight(Step),
    /// The salt has less time than it wants.
    ShortRest(TimeDelta),
    /// The bird may wait hot for this long: keep it at 140 °F or above.
    KeepHot(TimeDelta),
    /// The bird may be done so long before it is packed: until then it is kept at 140 °F or above.
    HotTillPacked(TimeDelta),
    /// A limit has been overrun by what was done: judge the food, don't guess.
    Overrun(Reason),
    /// Carved, chilled and reheated: the stuffing is taken out and chilled by itself.
    StuffingApart,
    /// Carried hot: the stuffing is taken out first and goes in a dish of its own.
    StuffingOut,
    /// The cooking time rests on less than a published table for this cooker.
    Cooking(crate::roast::Caution),
}

/// A thing the plan takes for granted.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Need {
    /// The bird itself.
    Bird,
    /// A food thermometer.
    Thermometer,
    /// Salt.
    Salt,
    /// A pan or tray with a rack.
    Rack,
    /// A leak-proof bag for the water.
    Bag,
    /// A vessel for the brine that fits the fridge.
    BrineVessel,
    /// Fuel for the fire.
    Fuel,
    /// Foil.
    Foil,
    /// Shallow dishes.
    ShallowDishes,
    /// A cooler with ice.
    Cooler,
    /// A cooler without ice, or a box as tight, and towels.
    HotBox,
    /// Broth for reheating.
    Broth,
}

/// A wish that can't be met as it stands.
#[derive(Debug, Clone, PartialEq)]
pub struct Conflict {
    /// Rules and facts that together ask for more time than there is.
    pub because: Vec<Reason>,
    /// How much is missing. Zero where time is not what is missing.
    pub short_by: TimeDelta,
    /// What would do, least trouble first. Each really solves it.
    pub offers: Vec<Offer>,
}

impl Conflict {
    /// What to go by until someone has chosen: dinner a little off `dinner`, for the jobs still have to be called. Nobody is called to
    /// another day's dinner that nobody chose; a bird over the heat is done when it is done.
    pub fn meanwhile(&self, dinner: Moment) -> Option<&Schedule> {
        let near = |offer: &&Offer| match offer.change {
            Change::Dinner(at) => {
                let on = offer.schedule.job(Step::On, 0).is_none_or(|job| job.done);
                on || (at - dinner).abs() <= SAME_DINNER
            }
            _ => false,
        };
        self.offers.iter().find(near).map(|offer| &offer.schedule)
    }
}

/// A change that makes the wish possible.
#[derive(Debug, Clone, PartialEq)]
pub struct Offer {
    /// What is changed.
    pub change: Change,
    /// Trouble it makes, to rank by: about the minutes of work, waiting or regret it costs. A judgement, not a measurement.
    pub cost: u32,
    /// The plan as it would be.
    pub schedule: Schedule,
}

names!(Need {
    Bird => "bird",
    Thermometer => "thermometer",
    Salt => "salt",
    Rack => "rack",
    Bag => "bag",
    BrineVessel => "brine-vessel",
    Fuel => "fuel",
    Foil => "foil",
    ShallowDishes => "shallow-dishes",
    Cooler => "cooler",
    HotBox => "hot-box",
    Broth => "broth",
});
