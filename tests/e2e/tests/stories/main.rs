//! Stories of whole examinations, as people walk through them on a phone.

mod answers;
mod by_eye;
mod by_meter;
mod file;
mod hostile;
mod picture;
mod sizes;
mod statement;
mod walker;
mod windows;
