//! The real program as a child process: started, signalled, killed, and asked how it ended.
//!
//! Cargo gives a package's tests the path of that package's own binaries only, so the program is found beside the test
//! itself (`target/PROFILE/carvetime`). `cargo test --workspace` builds it; if it is missing or older than the sources
//! (`cargo test -p carvetime-tests`), `cargo build --bin carvetime` runs first, once in each test process, lest a test
//! passes on a stale program. `CARVETIME_BIN` names another program instead and skips all this.

use crate::clock::{CLOCK_FILE, LISTEN, TestClock};
use crate::loopback::{Loopback, TOKEN};
use std::net::SocketAddr;
use std::path::{Path, PathBuf};
use std::process::{Child, Command, ExitStatus, Output, Stdio};
use std::sync::{Arc, Mutex, OnceLock};
use std::time::{Duration, Instant};

/// Path of the program, built if need be.
pub fn carvetime() -> &'static Path {
    static PATH: OnceLock<PathBuf> = OnceLock::new();
    PATH.get_or_init(|| {
        if let Some(path) = std::env::var_os("CARVETIME_BIN") {
            return path.into();
        }
        let profile = profile();
        let path = profile.join(format!("carvetime{}", std::env::consts::EXE_SUFFIX));
        if is_fresh(&path) {
            return path;
        }
        let release = profile.file_name().is_some_and(|name| name == "release");
        let cargo = std::env::var_os("CARGO").unwrap_or_else(|| "cargo".into());
        let mut build = Command::new(cargo);
        build.args(["build", "--quiet", "--bin", "carvetime", "--package", "carvetime"]);
        // The same set of packages as the running test, so that features unify alike and nothing is built twice.
        build.args(["--package", "carvetime-tests"]);
        build.current_dir(env!("CARGO_MANIFEST_DIR")).env("CARGO_TARGET_DIR", profile.parent().unwrap_or(&profile));
        if release {
            build.arg("--release");
        }
        // What cargo tells a test about its package would reach build scripts, which then run again (ring's does).
        for (name, _) in std::env::vars_os() {
            if name.to_str().is_some_and(|name| name.starts_with("CARGO_PKG") || name.starts_with("CARGO_MANIFEST")) {
                build.env_remove(name);
            }
        }
        let built = build.status().expect("cargo runs");
        assert!(built.success(), "the program does not build");
        path
    })
}

/// Whether the program is newer than everything it is made of.
fn is_fresh(program: &Path) -> bool {
    let written = |path: &Path| path.metadata().and_then(|meta| meta.modified()).ok();
    let Some(built) = written(program) else { return false };
    let root = Path::new(env!("CARGO_MANIFEST_DIR")).join("..");
    let mut paths: Vec<PathBuf> =
        ["Cargo.lock", "bot/Cargo.toml", "core/Cargo.toml", "bot/src", "core/src", "locales", "bot/fonts"]
            .map(|part| root.join(part))
            .into();
    while let Some(path) = paths.pop() {
        if path.is_dir() {
            paths.extend(std::fs::read_dir(&path).into_iter().flatten().flatten().map(|entry| entry.path()));
        } else if written(&path).is_some_and(|changed| changed > built) {
            return false;
        }
    }
    true
}

/// `target/PROFILE`, where this test was built.
fn profile() -> PathBuf {
    let test = std::env::current_exe().expect("a test knows its own path");
    let profile = test.ancestors().skip(1).find(|dir| dir.file_name().is_none_or(|name| name != "deps"));
    profile.expect("tests stand in target/PROFILE/deps").to_path_buf()
}

/// A child process; killed when dropped.
#[derive(Clone)]
pub struct Program {
    child: Arc<Mutex<Child>>,
    log: PathBuf,
}

impl Program {
    /// `carvetime serve` against `server`, keeping its data in `data`. Its stderr goes to `data`'s sibling `NAME.log`.
    pub fn serve(server: &Loopback, data: &Path) -> Self {
        let mut command = Command::new(carvetime());
        command.arg("serve").arg("--data").arg(data);
        Self::start(command, server, data)
    }

    /// The same code by the clock of the test: this package's own `clocked`, which cargo builds with the tests. `log`: what
    /// it logs, as in `RUST_LOG`; `listen`: where updates are delivered to it.
    pub fn clocked(server: &Loopback, data: &Path, clock: &TestClock, log: &str, listen: Option<SocketAddr>) -> Self {
        Self::start(Self::clocked_command(data, clock, log, listen), server, data)
    }

    /// The command of [`Self::clocked`], for more to be set.
    pub fn clocked_command(data: &Path, clock: &TestClock, log: &str, listen: Option<SocketAddr>) -> Command {
        let mut command = Command::new(profile().join(format!("clocked{}", std::env::consts::EXE_SUFFIX)));
        command.arg(data).env(CLOCK_FILE, clock.file()).env("RUST_LOG", log);
        command.env("MALLOC_ARENA_MAX", "1"); // the program sees to that itself
        command.envs(listen.map(|listen| (LISTEN, listen.to_string())));
        command
    }

    /// What the program is measured beside: this package's `echo`; keeps nothing, or keeps `data` as carefully as simple bots do.
    pub fn echo(server: &Loopback, log: &Path, data: Option<&Path>) -> Self {
        let mut command = Command::new(profile().join(format!("echo{}", std::env::consts::EXE_SUFFIX)));
        command.args(data).env("RUST_LOG", "off");
        Self::start(command, server, log)
    }

    /// The same with any command line.
    pub fn start(mut command: Command, server: &Loopback, data: &Path) -> Self {
        let log = data.with_extension("log");
        let file = std::fs::OpenOptions::new().create(true).append(true).open(&log).expect("a log beside the data");
        command.env("TELOXIDE_TOKEN", TOKEN).env("TELOXIDE_API_URL", server.url());
        command.stdin(Stdio::null()).stdout(Stdio::null()).stderr(file);
        let child = command.spawn().expect("the program starts");
        Self { child: Arc::new(Mutex::new(child)), log }
    }

    /// Process id.
    pub fn id(&self) -> u32 {
        self.child().id()
    }

    /// `kill -9`, and waits until it is gone.
    pub fn kill(&self) {
        let mut child = self.child();
        let _ = child.kill();
        let _ = child.wait();
    }

    /// Asks it to stop, as a service manager does.
    pub fn terminate(&self) {
        let sent = Command::new("kill").args(["-TERM", &self.id().to_string()]).status();
        assert!(sent.is_ok_and(|status| status.success()), "the signal is sent");
    }

    /// Waits until it ends by itself.
    ///
    /// # Panics
    /// If it does not within `patience`.
    pub fn wait(&self, patience: Duration) -> ExitStatus {
        let until = Instant::now() + patience;
        loop {
            if let Some(status) = self.child().try_wait().expect("a child of ours") {
                return status;
            }
            assert!(Instant::now() < until, "still running after {patience:?}; its log:\n{}", self.log());
            std::thread::sleep(Duration::from_millis(10));
        }
    }

    /// Whether it runs.
    pub fn runs(&self) -> bool {
        self.child().try_wait().is_ok_and(|status| status.is_none())
    }

    /// What it and its predecessors with the same data wrote to stderr.
    pub fn log(&self) -> String {
        std::fs::read_to_string(&self.log).unwrap_or_default()
    }

    /// The end of it.
    pub fn last_log(&self) -> String {
        let log = self.log();
        let lines: Vec<&str> = log.lines().rev().take(40).collect();
        lines.into_iter().rev().collect::<Vec<_>>().join("\n")
    }

    /// Resident memory now and at its highest, in bytes, as Linux tells it.
    pub fn memory(&self) -> Option<(u64, u64)> {
        let status = std::fs::read_to_string(format!("/proc/{}/status", self.id())).ok()?;
        let field = |name: &str| {
            let line = status.lines().find_map(|line| line.strip_prefix(name))?;
            line.trim().split(' ').next()?.parse::<u64>().ok().map(|kib| kib * 1024)
        };
        Some((field("VmRSS:")?, field("VmHWM:")?))
    }

    /// Time of the processor that all its threads have had, as Linux tells it.
    pub fn processor(&self) -> Option<Duration> {
        let threads = std::fs::read_dir(format!("/proc/{}/task", self.id())).ok()?;
        let had = threads.filter_map(|thread| {
            let told = std::fs::read_to_string(thread.ok()?.path().join("schedstat")).ok()?;
            told.split(' ').next()?.parse().ok()
        });
        Some(had.map(Duration::from_nanos).sum())
    }

    fn child(&self) -> std::sync::MutexGuard<'_, Child> {
        self.child.lock().unwrap_or_else(std::sync::PoisonError::into_inner)
    }
}

impl Drop for Program {
    fn drop(&mut self) {
        if Arc::strong_count(&self.child) == 1 {
            self.kill();
        }
    }
}

/// Runs the program to its end with `args` and nothing on stdin.
pub fn run(args: &[&str]) -> Output {
    let command = &mut Command::new(carvetime());
    command.args(args).stdin(Stdio::null()).output().expect("the program starts")
}
