//! Why a page is not sealed.

use thiserror::Error;

/// Why a page is not sealed.
#[derive(Debug, Clone, PartialEq, Eq, Error)]
pub enum SealFault {
    /// Not a page with an examination and its verdict in it that ends as one does.
    #[error("this is not a page that can be sealed")]
    NotAPage,
    /// The page does not name the key, or names another.
    #[error("the page was not made for this key")]
    OtherKey,
    /// The time is none.
    #[error("the time must be a date and time such as 2026-11-24T10:30:00Z")]
    Moment,
    /// What was signed is not what is to be signed for this page.
    #[error("what was signed does not belong to this page")]
    OtherPage,
    /// The signature is not one of this key over the statement.
    #[error("the signature is not one of this key")]
    Signature,
}
