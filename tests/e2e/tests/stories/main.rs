//! Stories of whole examinations, as people walk through them on a phone.

mod afterwards;
mod answers;
mod archive;
mod by_eye;
mod by_meter;
mod file;
mod hostile;
mod instruments;
mod picture;
mod seal;
mod sizes;
mod statement;
mod walker;
mod windows;
