//! Who eats: people told by a number, in all, besides those told before or missing from them.

use super::super::party::{self, Turn};
use super::super::problem::{GUESTS, Problem};
use super::Reader;

impl Reader<'_> {
    /// `11 people`, `4 adults 3 kids`, `for 11`, `we are 11`; `3 more`, `4 less people`, `aunt Carol isn't coming`.
    pub(super) fn people(&mut self) {
        if self.people_in_all() {
            return;
        }
        for at in self.places() {
            if self.s.is(at, "nobody") {
                self.problems.push(Problem::Guests(0.0));
            }
            let more = self.one_more(at);
            let Some(count) = self.s.number(at).or(more.then_some(1.0)).filter(|_| self.free(at)) else { continue };
            // "Ya no somos 10, somos 11"
            let refused = (1..=2).filter_map(|back| at.checked_sub(back)).any(|before| self.s.is(before, "negation"));
            if refused && self.places().any(|other| other > at && self.s.number(other).is_some()) {
                self.take(at, at);
                continue;
            }
            let count = count * self.sign(at);
            // "una ventina di persone"
            let next = at + 1 + usize::from(self.s.is(at + 1, "number-of"));
            let (adults, children) = (self.s.is(next, "adults"), self.s.is(next, "children"));
            // "12 of us, 3 of them kids", "davon 3 Kinder": they are counted already.
            let among = self.children_among(at, next);
            let (next, children) = among.map_or((next, children), |at| (at, true));
            // "3 more", "2 more kids", "4 less people": besides those who were told, or out of them.
            let turns = |at: usize| self.turns(at).is_some();
            let beside = turns(next);
            let next = next + usize::from(beside);
            let (adults, children) = (adults || self.s.is(next, "adults"), children || self.s.is(next, "children"));
            let before = at.checked_sub(1).filter(|before| turns(*before) && !self.of_an_hour(*before));
            let alone =
                (beside || before.is_some()) && (next >= self.s.len() || self.s.mark(next).is_some() || turns(next));
            // "+2 for dinner"
            let plus =
                at > 0 && self.s.mark(at - 1) == Some('+') && self.places().any(|at| self.s.of(at, "meal-").is_some());
            let more = more || plus;
            let counted = adults || children || self.s.is(next, "people") || alone || plus;
            let around = [beside.then(|| next - 1), before, Some(next + 1), Some(next)];
            let turn = around.into_iter().flatten().find_map(|near| self.turns(near)).filter(|_| counted);
            self.wish.more |= turn == Some(Turn::More) || more;
            self.wish.fewer |= turn == Some(Turn::Fewer);
            let fed = at > 0 && self.s.is(at - 1, "for") && self.stands_alone(next);
            if !counted && !fed {
                continue;
            }
            self.take(at, if counted { next } else { at });
            // Of a range the table is laid for the larger number.
            let count = self.s.upper(at).and_then(|upper| upper.bare()).unwrap_or(count);
            match whole_guests(count, children) {
                Some(count) if children => {
                    // "My sister and her 2 kids aren't coming".
                    if turn.is_some() && among.is_none() && self.and_theirs(at) {
                        self.wish.adults = Some(self.wish.adults.unwrap_or(0).saturating_add(1));
                    }
                    self.wish.children = Some(count);
                    self.wish.among = among.is_some();
                }
                Some(count) => self.wish.adults = Some(self.wish.adults.unwrap_or(0).saturating_add(count)),
                None => self.problems.push(Problem::Guests(count)),
            }
        }
        // "My cousin and his 2 kids are coming too"
        let phrase = |at: usize| self.s.is(at, "joining") && self.s.raw(at).contains(' ');
        let counted = self.wish.adults.is_some() || self.wish.children.is_some();
        let missing = |at: usize| self.s.is(at, "leaving") && self.s.raw(at).contains(' ');
        self.wish.fewer |= counted && !self.wish.more && self.places().any(missing);
        self.wish.more |= counted && !self.wish.fewer && self.places().any(phrase);
        self.wish.more &= !self.wish.fewer;
        if !counted
            && let Some((count, turn)) =
                party::named(self.s.quote(0, self.s.len().saturating_sub(1)), self.ground.lexicon)
        {
            self.wish.adults = Some(count);
            (self.wish.more, self.wish.fewer) = (turn == Turn::More, turn == Turn::Fewer);
        }
        if self.wish.among && self.wish.adults.is_some() {
            self.wish.take_children_out();
        }
    }

    /// "One more person", "another guest".
    fn one_more(&self, at: usize) -> bool {
        let person = |at: usize| ["people", "adults", "children"].iter().any(|word| self.s.is(at, word));
        self.s.is(at, "another") && person(at + 1)
    }

    /// Whether somebody named before has the children counted at `at`: "Carol and her 2 kids".
    fn and_theirs(&self, at: usize) -> bool {
        at >= 3 && self.s.is(at - 2, "number-and")
            || at >= 2 && self.s.is(at - 1, "number-and") && self.s.number(at - 2).is_none()
    }

    /// Whether the piece says that people come besides, or are missing.
    fn turns(&self, at: usize) -> Option<Turn> {
        let leaves = self.s.is(at, "leaving").then_some(Turn::Fewer);
        leaves.or_else(|| self.s.is(at, "joining").then_some(Turn::More))
    }

    /// "Las 8 menos 10": a number stands before it.
    fn of_an_hour(&self, at: usize) -> bool {
        at.checked_sub(1).is_some_and(|before| self.s.number(before).is_some())
    }

    /// "Carol and Rick are coming too, so 11 now", "2 dropped out, we're 9": who comes or goes is counted already.
    fn people_in_all(&mut self) -> bool {
        if !self.places().any(|at| self.turns(at).is_some()) {
            return false;
        }
        // "The Millers aren't coming so 6 of us"
        let so = |at: usize, counted: usize| {
            let before = at.checked_sub(1).map(|before| super::super::fold(self.s.raw(before)));
            before.is_some_and(|before| self.ground.lexicon.talk(&before, "so"))
                && (counted > 0 || at + 1 >= self.s.len() || self.s.mark(at + 1).is_some())
        };
        let total = |at: &usize| {
            let (at, before) = (*at, at.checked_sub(1));
            let all = |at: usize| self.s.is(at, "now") || self.s.is(at, "in-all");
            let counted = usize::from(self.s.is(at + 1, "people"));
            let fed = before.is_some_and(|before| self.s.is(before, "for")) && self.stands_alone(at + 1);
            let turned = [Some(at + 1), Some(at + 2).filter(|_| counted > 0), before];
            self.free(at)
                && self.s.number(at).is_some()
                && (all(at + 1 + counted)
                    || before.is_some_and(|before| self.s.is(before, "in-all"))
                    || fed
                    || so(at, counted)
                    || counted > 0 && self.behind_a_name(at))
                && !turned.into_iter().flatten().any(|near| self.turns(near).is_some())
        };
        let Some(at) = self.places().find(total) else { return false };
        let count = self.s.number(at).unwrap_or_default();
        for other in self.places().filter(|other| self.s.number(*other).is_some()) {
            self.take(other, other);
        }
        match whole_guests(count, false) {
            Some(count) => self.wish.adults = Some(count),
            None => self.problems.push(Problem::Guests(count)),
        }
        true
    }

    /// "Gabi kommt mit, 11 Leute": who comes or goes was named before the sign, and the number is of more than those.
    fn behind_a_name(&self, at: usize) -> bool {
        let sign = |at: &usize| matches!(self.s.mark(*at), Some(',' | ';' | '.' | '!' | ':' | '\n'));
        let Some(end) = (0..at).rev().find(sign).and_then(|sign| sign.checked_sub(1)) else { return false };
        let named = party::named(self.s.quote(0, end), self.ground.lexicon);
        named.is_some_and(|(named, _)| self.s.number(at).is_some_and(|count| count > f64::from(named)))
    }

    /// Where the children of whom there are as many as `at` says stand, if those are counted among the people: a word for that
    /// stands before the number or behind it, the children one or two places behind.
    fn children_among(&self, at: usize, next: usize) -> Option<usize> {
        let of_them = |at: usize| self.s.is(at, "among");
        let before = (1..=2).any(|back| at.checked_sub(back).is_some_and(of_them));
        let from = if of_them(next) || self.s.is(next, "people") { next + 1 } else { next };
        (before || from > next).then(|| (from..=from + 1).find(|at| self.s.is(*at, "children")))?
    }

    /// Nothing at `at` gives the number before it another meaning.
    fn stands_alone(&self, at: usize) -> bool {
        let other = ["part-", "unit-", "month-"].iter().any(|group| self.s.of(at, group).is_some());
        !other && !self.s.is(at, "oclock") && self.s.mark(at) != Some(':')
    }
}

fn whole_guests(count: f64, children: bool) -> Option<u16> {
    let low = if children { 0.0 } else { GUESTS.0 as f64 };
    ((low..=GUESTS.1 as f64).contains(&count) && count.fract() == 0.0).then_some(count as u16)
}
