//! `cargo serve`: builds the app and serves it on this machine.

use std::process::ExitCode;

use crate::{
    Trouble, release,
    server::Server,
    setup::{Piece, Setup},
    site::Site,
};

/// The port unless another is asked for: not Trunk's, so that the two can run side by side and the
/// copy which the browser keeps of a release never hides a `trunk serve`.
pub const PORT: u16 = 8730;

/// Builds the app, serves it and prints the address, until the program is ended.
///
/// # Errors
/// When something that is needed cannot be had, the app does not build, or the port is taken.
pub fn serve(setup: &mut Setup, port: u16) -> Result<ExitCode, Trouble> {
    setup.prepare(&release::PIECES)?;
    let folder = release::build(setup.shell())?;
    if setup.prepare(&[Piece::Brotli]).is_ok() {
        release::compress(setup.shell(), &folder)?;
    }
    let server =
        Server::start(Site::new(folder), port).map_err(|trouble| format!("cannot listen on port {port}: {trouble}"))?;
    println!("Plugwary is at {} (Ctrl+C stops it)", server.origin());
    server.wait();
    Ok(ExitCode::SUCCESS)
}
