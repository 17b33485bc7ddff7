//! stderr without the bot token, should anything ever write it there.
//!
//! Nothing of ours prints the token, and the Bot API client takes it out of its errors. But a log at `trace` is written by a dozen
//! libraries, and a proxy in between may answer with a page that quotes the address it was asked for, token and all.

use std::io::{self, IsTerminal, Write};
use std::sync::OnceLock;
use tracing_subscriber::EnvFilter;

/// What stands in place of the token.
const INSTEAD: &str = "[token]";

/// Shorter than this, the part after the colon could stand in any sentence.
const SHORTEST: usize = 12;

/// Logs go to stderr from now on. `RUST_LOG` decides which; without it, `usual`.
pub fn log(usual: &str) {
    let filter = EnvFilter::try_from_default_env().unwrap_or_else(|_| EnvFilter::new(usual));
    tracing_subscriber::fmt().with_env_filter(filter).with_ansi(io::stderr().is_terminal()).with_writer(stderr).init();
}

/// stderr, a whole message a write.
pub fn stderr() -> Redacted<io::Stderr> {
    static SECRET: OnceLock<Option<String>> = OnceLock::new();
    let secret = SECRET.get_or_init(|| std::env::var("TELOXIDE_TOKEN").ok().as_deref().and_then(secret_of));
    Redacted { to: io::stderr(), secret: secret.as_deref() }
}

/// The part of a token that must not be seen: what follows its colon, however the colon is written in an address.
fn secret_of(token: &str) -> Option<String> {
    let token = token.trim();
    let secret = token.split_once(':').map_or(token, |(_, secret)| secret);
    let part = if secret.len() < SHORTEST { token } else { secret };
    (!part.is_empty()).then(|| part.to_owned())
}

/// A writer that leaves out the token.
#[derive(Debug)]
pub struct Redacted<W> {
    to: W,
    secret: Option<&'static str>,
}

impl<W: Write> Write for Redacted<W> {
    fn write(&mut self, bytes: &[u8]) -> io::Result<usize> {
        match self.secret {
            Some(secret) if holds(bytes, secret.as_bytes()) => {
                let text = String::from_utf8_lossy(bytes).replace(secret, INSTEAD);
                self.to.write_all(text.as_bytes())?;
            }
            _ => self.to.write_all(bytes)?,
        }
        Ok(bytes.len())
    }

    fn flush(&mut self) -> io::Result<()> {
        self.to.flush()
    }
}

fn holds(bytes: &[u8], part: &[u8]) -> bool {
    bytes.windows(part.len()).any(|window| window == part)
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::*;

    #[test]
    fn the_secret_half_of_a_token_is_left_out_however_its_colon_is_written() {
        let mut out = Vec::new();
        let mut redacted = Redacted { to: &mut out, secret: Some("AAE-loopback_secret") };
        for text in ["GET /bot4242:AAE-loopback_secret/getMe", " 4242%3AAAE-loopback_secret", " plain"] {
            redacted.write_all(text.as_bytes()).unwrap();
        }
        assert_eq!(String::from_utf8(out).unwrap(), "GET /bot4242:[token]/getMe 4242%3A[token] plain");
    }

    #[test]
    fn a_short_or_odd_token_is_left_out_whole() {
        assert_eq!(secret_of("4242:AAE-loopback_secret\n").unwrap(), "AAE-loopback_secret");
        assert_eq!(secret_of("42:x").unwrap(), "42:x");
        assert_eq!(secret_of("no-colon-at-all").unwrap(), "no-colon-at-all");
        assert_eq!(secret_of(" "), None);
    }
}
