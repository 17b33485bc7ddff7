use std::path::Path;
use std::time::Instant;
fn main() {
    let data = Path::new("/tmp/fast_bells");
    if !data.exists() {
        carvetime_tests::fill::bells(data, 1_000_000);
    }
    for _ in 0..3 {
        let began = Instant::now();
        let (book, _) = carvetime::book::keeper::open(data, chrono::Utc::now()).unwrap();
        println!("keeper::open {:?}", began.elapsed());
        drop(book);
        let began = Instant::now();
        let book = carvetime::book::SledBook::open(data).unwrap();
        println!("SledBook::open {:?}", began.elapsed());
        drop(book);
    }
}
