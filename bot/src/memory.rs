//! Keeps the memory of a server that runs for weeks within bounds.
//!
//! glibc gives threads heaps of their own and keeps what each once needed; with the runtime's and the store's threads that grew by a
//! third over a million messages. One heap for all does not grow, and is no slower here. glibc reads the setting from the environment
//! when the program starts, and to set it later takes unsafe code: so the program starts itself once more, in its place.

use std::ffi::OsStr;

/// How many heaps glibc may keep.
const HEAPS: &str = "MALLOC_ARENA_MAX";

/// Whoever sets one of these has decided.
const SETTINGS: [&str; 2] = [HEAPS, "GLIBC_TUNABLES"];

/// Starts this program anew with bounded memory, if nobody has set otherwise: same process, arguments, environment. Comes back where
/// that is done already, is not needed, or does not work; then it goes on as it is.
pub fn bound() {
    #[cfg(all(target_os = "linux", target_env = "gnu"))]
    if needed(|name| std::env::var_os(name).is_some_and(|value| value != OsStr::new(""))) {
        use std::os::unix::process::CommandExt;
        let mut args = std::env::args_os();
        let name = args.next().unwrap_or_else(|| "carvetime".into());
        // By its path, so that it keeps its name among the processes.
        let error = match std::env::current_exe() {
            Ok(path) => std::process::Command::new(path).arg0(name).args(args).env(HEAPS, "1").exec(),
            Err(error) => error,
        };
        tracing::warn!(%error, "memory is not bounded");
    }
}

#[cfg_attr(not(all(target_os = "linux", target_env = "gnu")), allow(dead_code))]
fn needed(is_set: impl Fn(&str) -> bool) -> bool {
    !SETTINGS.into_iter().any(is_set)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_an_operator_has_set_stands() {
        assert!(needed(|_| false));
        assert!(!needed(|name| name == "MALLOC_ARENA_MAX"));
        assert!(!needed(|name| name == "GLIBC_TUNABLES"));
    }
}
