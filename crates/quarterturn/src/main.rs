//! The program: the command line, and the window.

use std::process::ExitCode;

fn main() -> ExitCode {
    let mut out = std::io::stdout().lock();
    let mut err = std::io::stderr().lock();
    ExitCode::from(quarterturn::run(std::env::args_os(), &mut out, &mut err))
}
