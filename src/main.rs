//! The program: in a browser it mounts the screens, on a desk it judges files.

#[cfg(target_arch = "wasm32")]
fn main() {
    plugwary::screens::mount();
}

#[cfg(not(target_arch = "wasm32"))]
fn main() -> std::process::ExitCode {
    plugwary::judge::main(std::env::args_os().skip(1))
}
