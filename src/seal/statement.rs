//! What is signed, and where it stands: one block at the end of a page, of which each byte is given by what it says.

use serde::{Deserialize, Serialize};

use super::fault::SealFault;
use super::key::PublicKey;
use super::rule_book;
use crate::domain::assess::RuleBook;
use crate::record::digest::{from_hexadecimal, hexadecimal, sha256};
use crate::record::{Pieces, is_moment};

/// What every page ends with; a seal stands right before it.
pub const ENDING: &str = "</body>\n</html>\n";

/// What stands before a seal in a page.
pub const OPENING: &str = "<script type=\"application/json\" id=\"plugwary-seal\">";

/// What stands behind it, and then the page ends.
pub const CLOSING: &str = "</script>\n";

/// What a seal says it is.
const FORMAT: &str = "plugwary-seal";

/// The version of seals that are made and checked here.
const VERSION: u64 = 1;

/// Signed before all else, so that nothing signed for another purpose is a seal.
const PREFIX: &str = "plugwary-seal 1\n";

/// Between what is signed and the signature.
const SIGNATURE: &str = ",\"signature\":\"";

/// No seal is longer: each of its photos takes 67 characters.
const LONGEST: usize = 256 * 1024;

const MENTION: &str = "<meta name=\"plugwary-sealed-by\" content=\"";

/// What is signed. Digests are SHA-256 in lower-case hexadecimal digits.
#[derive(Debug, Clone, PartialEq, Eq, Deserialize, Serialize)]
#[serde(deny_unknown_fields)]
pub struct Statement {
    format: String,
    version: u64,
    key: String,
    /// When it was sealed, by the clock of the device.
    pub sealed: String,
    /// The rules that judged.
    pub rule_book: Rules,
    /// Of the examination.
    pub examination: String,
    /// Of the verdict line.
    pub verdict: String,
    /// Of each photo, in the order of the page.
    pub photos: Vec<String>,
    /// Of the page without these.
    pub text: String,
    /// Of every byte before the seal.
    pub page: String,
}

/// Which rule book it was.
#[derive(Debug, Clone, PartialEq, Eq, Deserialize, Serialize)]
#[serde(deny_unknown_fields)]
pub struct Rules {
    /// Its edition.
    pub edition: String,
    /// Of the published page of limits and rules.
    pub sha256: String,
}

/// A seal as it was found in a page.
#[derive(Debug)]
pub enum Seal {
    /// Signed by its key.
    Whole(Box<Statement>, PublicKey),
    /// Of a later version.
    Newer,
    /// Not as it was made, or not signed by its key.
    Broken,
}

impl Statement {
    /// What a page says that names this key; nothing where it is no page of ours.
    fn of(page: &str, key: &PublicKey, sealed: &str) -> Option<Self> {
        let pieces = Pieces::of(page);
        Some(Self {
            format: FORMAT.to_owned(),
            version: VERSION,
            key: key.hexadecimal(),
            sealed: sealed.to_owned(),
            rule_book: Rules { edition: RuleBook::CURRENT.edition.to_owned(), sha256: rule_book() },
            examination: pieces.examination_sha256()?,
            verdict: pieces.verdict_sha256()?,
            photos: pieces.photos().collect::<Option<_>>()?,
            text: pieces.text_sha256(),
            page: sha256(page.as_bytes()),
        })
    }

    /// The one way to write it.
    #[expect(clippy::expect_used, reason = "a statement has nothing that JSON cannot hold")]
    fn to_json(&self) -> String {
        serde_json::to_string(self).expect("numbers and texts are JSON")
    }

    /// Reads what is written in the one way.
    fn from_json(json: &str) -> Option<Self> {
        let statement: Self = serde_json::from_str(json).ok()?;
        let is_ours = statement.format == FORMAT && statement.version == VERSION && is_moment(&statement.sealed);
        (is_ours && statement.to_json() == json).then_some(statement)
    }
}

impl Seal {
    /// Reads what stands between [`OPENING`] and [`CLOSING`], byte for byte.
    pub fn read(block: &str) -> Self {
        if block.len() > LONGEST {
            return Self::Broken;
        }
        Self::whole(block).unwrap_or(if is_newer(block) { Self::Newer } else { Self::Broken })
    }

    fn whole(block: &str) -> Option<Self> {
        let (statement, signature) = block.strip_suffix("\"}")?.rsplit_once(SIGNATURE)?;
        let json = format!("{statement}}}");
        let statement = Statement::from_json(&json)?;
        let key = PublicKey::from_hexadecimal(&statement.key)?;
        let signature: [u8; 64] = from_hexadecimal(signature)?.try_into().ok()?;
        key.verifies(format!("{PREFIX}{json}").as_bytes(), &signature).then(|| Self::Whole(Box::new(statement), key))
    }
}

fn is_newer(block: &str) -> bool {
    #[derive(Deserialize)]
    struct Envelope {
        format: String,
        version: u64,
    }
    let envelope = serde_json::from_str::<Envelope>(block);
    envelope.is_ok_and(|envelope| envelope.format == FORMAT && envelope.version > VERSION)
}

/// What a page carries in its head that names the key it is sealed with, so that a lost seal is missed.
pub fn mention(key: &PublicKey) -> String {
    format!("{MENTION}{}\">\n", key.hexadecimal())
}

/// The key that a page names.
pub fn mentioned(page: &str) -> Option<PublicKey> {
    let (_, after) = page.split_once(MENTION)?;
    PublicKey::from_hexadecimal(after.split_once('"')?.0)
}

/// The bytes that are to be signed to seal a page, which must be made for this key; `sealed` is the time, RFC 3339 with zone.
///
/// # Errors
///
/// When the page was not made for this key, is no page of ours or is sealed already, or the time is none.
pub fn statement(page: &str, key: &PublicKey, sealed: &str) -> Result<Vec<u8>, SealFault> {
    let body = page.strip_suffix(ENDING).filter(|body| !body.contains(OPENING)).ok_or(SealFault::NotAPage)?;
    if !is_moment(sealed) {
        return Err(SealFault::Moment);
    }
    if mentioned(body) != Some(*key) {
        return Err(SealFault::OtherKey);
    }
    let statement = Statement::of(body, key, sealed).ok_or(SealFault::NotAPage)?;
    Ok(format!("{PREFIX}{}", statement.to_json()).into_bytes())
}

/// The sealed page: the page, what [`statement`] said of it and the signature over that, 64 bytes.
///
/// # Errors
///
/// When the three do not belong together.
pub fn attach(page: &str, statement: &[u8], signature: &[u8]) -> Result<String, SealFault> {
    let body = page.strip_suffix(ENDING).ok_or(SealFault::NotAPage)?;
    let json = str::from_utf8(statement).ok().and_then(|text| text.strip_prefix(PREFIX)).ok_or(SealFault::OtherPage)?;
    let said = Statement::from_json(json).ok_or(SealFault::OtherPage)?;
    let key = PublicKey::from_hexadecimal(&said.key).ok_or(SealFault::OtherPage)?;
    if self::statement(page, &key, &said.sealed)? != statement {
        return Err(SealFault::OtherPage);
    }
    let signature: [u8; 64] = signature.try_into().ok().ok_or(SealFault::Signature)?;
    if !key.verifies(statement, &signature) {
        return Err(SealFault::Signature);
    }
    let signed = json.strip_suffix('}').unwrap_or(json);
    Ok([body, OPENING, signed, SIGNATURE, &hexadecimal(&signature), "\"}", CLOSING, ENDING].concat())
}
