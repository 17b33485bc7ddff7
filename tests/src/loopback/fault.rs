//! What goes wrong, where and how often.

use std::fmt;
use std::sync::Arc;
use std::time::Duration;

/// One thing going wrong with one call.
#[derive(Clone)]
pub enum Fault {
    /// 429 with `retry_after` in seconds. Not applied.
    TooMany(u32),
    /// Any other refusal: HTTP status and description. Not applied.
    Refuse(u16, &'static str),
    /// Not applied; the answer is no JSON but a page that quotes the address asked for, as proxies write them.
    Page(u16),
    /// The connection closes before the call is applied.
    Reset,
    /// The call is applied; its reply is lost.
    LoseReply,
    /// The call waits before it is applied.
    Delay(Duration),
    /// Runs before the call is applied; then the connection closes. For killing the program.
    Before(Arc<dyn Fn() + Send + Sync>),
    /// The call is applied, this runs, and the reply is lost. For killing the program.
    After(Arc<dyn Fn() + Send + Sync>),
}

impl fmt::Debug for Fault {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Fault::TooMany(seconds) => write!(f, "TooMany({seconds})"),
            Fault::Refuse(status, text) => write!(f, "Refuse({status}, {text})"),
            Fault::Page(status) => write!(f, "Page({status})"),
            Fault::Reset => write!(f, "Reset"),
            Fault::LoseReply => write!(f, "LoseReply"),
            Fault::Delay(time) => write!(f, "Delay({time:?})"),
            Fault::Before(_) => write!(f, "Before"),
            Fault::After(_) => write!(f, "After"),
        }
    }
}

/// Which calls a fault meets: those of `method` (any if `None`), after `skip` of them, `times` times.
#[derive(Debug, Clone)]
pub struct Rule {
    /// Method, ignoring case.
    pub method: Option<&'static str>,
    /// Calls let through first.
    pub skip: usize,
    /// Calls met after that.
    pub times: usize,
    /// What happens to them.
    pub fault: Fault,
}

impl Rule {
    /// The next call of `method`.
    pub fn next(method: &'static str, fault: Fault) -> Self {
        Self { method: Some(method), skip: 0, times: 1, fault }
    }

    /// The `nth` call from now on (0 is the next), whatever its method.
    pub fn nth(nth: usize, fault: Fault) -> Self {
        Self { method: None, skip: nth, times: 1, fault }
    }
}

/// The rules in force.
#[derive(Debug, Default)]
pub(super) struct Faults {
    rules: Vec<Rule>,
}

impl Faults {
    pub(super) fn add(&mut self, rule: Rule) {
        self.rules.push(rule);
    }

    /// Takes back what has met no call yet, and tells how many rules that were.
    pub(super) fn clear(&mut self) -> usize {
        std::mem::take(&mut self.rules).len()
    }

    /// The fault this call of `method` meets; counts it.
    pub(super) fn meet(&mut self, method: &str) -> Option<Fault> {
        let mut met = None;
        for rule in &mut self.rules {
            if rule.method.is_some_and(|wanted| !wanted.eq_ignore_ascii_case(method)) {
                continue;
            }
            if rule.skip > 0 {
                rule.skip -= 1;
            } else if rule.times > 0 && met.is_none() {
                rule.times -= 1;
                met = Some(rule.fault.clone());
            }
        }
        self.rules.retain(|rule| rule.times > 0);
        met
    }
}
