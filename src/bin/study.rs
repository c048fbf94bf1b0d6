//! The study: the screens for afterwards, when somebody sits down with what was found. It is a program of its own, so that the first
//! screen of the app does not wait for it.

fn main() {
    plugwary::screens::mount_study();
}
