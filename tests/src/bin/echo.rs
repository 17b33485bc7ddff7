//! Says back what it hears: what the program is measured beside. `echo` keeps nothing; `echo DATA_DIR` first writes each message to
//! sled and flushes. Both as the Bot API library's own guide does it.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use teloxide::prelude::*;

#[tokio::main]
async fn main() {
    let token = std::env::var("TELOXIDE_TOKEN").expect("a token");
    let url = std::env::var("TELOXIDE_API_URL").expect("a server");
    let bot = Bot::new(token).set_api_url(url.parse().expect("an address"));
    let book = std::env::args().nth(1).map(|folder| sled::open(folder).expect("a folder"));
    let handler = Update::filter_message().endpoint(|bot: Bot, message: Message, book: Option<sled::Db>| async move {
        let text = message.text().unwrap_or_default();
        if let Some(book) = book {
            book.insert([message.chat.id.0.to_be_bytes().as_slice(), &message.id.0.to_be_bytes()].concat(), text)
                .expect("the disk takes it");
            book.flush().expect("the disk takes it");
        }
        bot.send_message(message.chat.id, text).await?;
        Ok::<(), teloxide::RequestError>(())
    });
    Dispatcher::builder(bot, handler).dependencies(dptree::deps![book]).build().dispatch().await;
}
