//! What arrives from a front end: something heard, with what the platform knows of its delivery.

use crate::room::Heard;
use chrono::{DateTime, Utc};
use serde::{Deserialize, Serialize};

/// The platform's number of a delivery; the same number twice is the same delivery.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord, Serialize, Deserialize)]
pub struct UpdateId(pub u64);

/// Something heard, on its way to a turn.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Arrival {
    /// Number of the delivery, where there is one.
    pub update: Option<UpdateId>,
    /// What was heard.
    pub heard: Heard,
    /// The platform's number of the message, if it is one.
    #[serde(default)]
    pub message: Option<i64>,
    /// The topic of a group it was said in.
    #[serde(default)]
    pub topic: Option<Topic>,
    /// When it was said, if the platform tells.
    #[serde(default)]
    pub sent: Option<DateTime<Utc>>,
    /// What the group it was said in is called.
    #[serde(default)]
    pub title: Option<String>,
    /// The platform's id of a file that has to be fetched before this can be decided.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub file: Option<String>,
    /// How often the program ended in the middle of its turn.
    #[serde(default)]
    pub starts: u8,
}

/// Where in a group something was said.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub enum Topic {
    /// In no topic: answers go there too.
    General,
    /// In this one.
    Thread(i32),
}

impl Topic {
    /// The thread, if it is one.
    pub fn thread(self) -> Option<i32> {
        match self {
            Self::General => None,
            Self::Thread(thread) => Some(thread),
        }
    }
}

impl From<Heard> for Arrival {
    fn from(heard: Heard) -> Self {
        Self { update: None, heard, message: None, topic: None, sent: None, title: None, file: None, starts: 0 }
    }
}

impl From<(Option<UpdateId>, Heard)> for Arrival {
    fn from((update, heard): (Option<UpdateId>, Heard)) -> Self {
        Self { update, ..Self::from(heard) }
    }
}
