//! Connections that are counted: of a program that was killed, calls may still be on their way, and are served until its last connection
//! is closed.

use axum::serve::Listener;
use std::io;
use std::net::SocketAddr;
use std::pin::Pin;
use std::sync::Arc;
use std::sync::atomic::{AtomicUsize, Ordering};
use std::task::{Context, Poll};
use tokio::io::{AsyncRead, AsyncWrite, ReadBuf};
use tokio::net::{TcpListener, TcpStream};

/// How many connections are open.
pub type Open = Arc<AtomicUsize>;

/// Counts what it accepts.
pub struct Counting {
    pub listener: TcpListener,
    pub open: Open,
}

impl Listener for Counting {
    type Io = Counted;
    type Addr = SocketAddr;

    async fn accept(&mut self) -> (Counted, SocketAddr) {
        let (stream, from) = Listener::accept(&mut self.listener).await;
        self.open.fetch_add(1, Ordering::SeqCst);
        (Counted { stream, open: self.open.clone() }, from)
    }

    fn local_addr(&self) -> io::Result<SocketAddr> {
        self.listener.local_addr()
    }
}

/// A connection that is one less when it is dropped.
pub struct Counted {
    stream: TcpStream,
    open: Open,
}

impl Drop for Counted {
    fn drop(&mut self) {
        self.open.fetch_sub(1, Ordering::SeqCst);
    }
}

impl AsyncRead for Counted {
    fn poll_read(mut self: Pin<&mut Self>, cx: &mut Context<'_>, buf: &mut ReadBuf<'_>) -> Poll<io::Result<()>> {
        Pin::new(&mut self.stream).poll_read(cx, buf)
    }
}

impl AsyncWrite for Counted {
    fn poll_write(mut self: Pin<&mut Self>, cx: &mut Context<'_>, buf: &[u8]) -> Poll<io::Result<usize>> {
        Pin::new(&mut self.stream).poll_write(cx, buf)
    }

    fn poll_flush(mut self: Pin<&mut Self>, cx: &mut Context<'_>) -> Poll<io::Result<()>> {
        Pin::new(&mut self.stream).poll_flush(cx)
    }

    fn poll_shutdown(mut self: Pin<&mut Self>, cx: &mut Context<'_>) -> Poll<io::Result<()>> {
        Pin::new(&mut self.stream).poll_shutdown(cx)
    }
}
