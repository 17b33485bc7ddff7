//! Makes a new file in `locales/` a reason to build again: the embedding macro only notices changes of files it knows.

fn main() {
    println!("cargo:rerun-if-changed=../locales");
}
