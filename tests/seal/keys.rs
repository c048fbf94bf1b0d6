//! Keys, signatures and fingerprints, against published vectors.

use plugwary::record::digest::{from_hexadecimal, hexadecimal};
use plugwary::seal::{PublicKey, fingerprint, sign};

/// RFC 8032, section 7.1: secret key, public key, message, signature. The vector with a message of 1023 bytes is left out.
const VECTORS: [[&str; 4]; 4] = [
    [
        "9d61b19deffd5a60ba844af492ec2cc44449c5697b326919703bac031cae7f60",
        "d75a980182b10ab7d54bfed3c964073a0ee172f3daa62325af021a68f707511a",
        "",
        "e5564300c360ac729086e2cc806e828a84877f1eb8e5d974d873e065224901555fb8821590a33bacc61e39701cf9b46bd25bf5f0595bbe24655141438e7a100b",
    ],
    [
        "4ccd089b28ff96da9db6c346ec114e0f5b8a319f35aba624da8cf6ed4fb8a6fb",
        "3d4017c3e843895a92b70aa74d1b7ebc9c982ccf2ec4968cc0cd55f12af4660c",
        "72",
        "92a009a9f0d4cab8720e820b5f642540a2b27b5416503f8fb3762223ebdb69da085ac1e43e15996e458f3613d0f11d8c387b2eaeb4302aeeb00d291612bb0c00",
    ],
    [
        "c5aa8df43f9f837bedb7442f31dcb7b166d38535076f094b85ce3a2e0b4458f7",
        "fc51cd8e6218a1a38da47ed00230f0580816ed13ba3303ac5deb911548908025",
        "af82",
        "6291d657deec24024827e69c3abe01a30ce548a284743a445e3680d7db5ac3ac18ff9b538d16f290ae67f760984dc6594a7c15e9716ed28dc027beceea1ec40a",
    ],
    [
        "833fe62409237b9d62ec77587520911e9a759cec1d19755b7da901b96dca3d42",
        "ec172b93ad5e563bf4932c70e1245034c35467ef2efd4d64ebf819683467e2bf",
        "ddaf35a193617abacc417349ae20413112e6fa4e89a97ea20a9eeee64b55d39a2192992a274fc1a836ba3c23a3feebbd454d4423643ce80e2a9ac94fa54ca49f",
        "dc2a4459e7369633a52b1bf277839a00201009a3efbf3ecb69bea2186c26b58909351fc9ac90b3ecfdfbc7c66431e0303dca179c138ac17ad9bef1177331a704",
    ],
];

fn bytes<const N: usize>(digits: &str) -> [u8; N] {
    from_hexadecimal(digits).and_then(|bytes| bytes.try_into().ok()).expect("the vector has so many bytes")
}

#[test]
fn keys_and_signatures_are_those_of_rfc_8032() {
    for [secret, public, message, signature] in VECTORS {
        let (secret, message) = (bytes(secret), from_hexadecimal(message).expect("the message is hexadecimal"));
        let key = PublicKey::of(&secret);
        assert_eq!(key.hexadecimal(), public);
        assert_eq!(hexadecimal(&sign(&secret, &message)), signature);
        assert!(key.verifies(&message, &bytes(signature)));
    }
}

#[test]
fn a_signature_fits_one_message_and_one_key() {
    for [_, public, message, signature] in VECTORS {
        let key = PublicKey::from_hexadecimal(public).expect("it is a key");
        let mut message = from_hexadecimal(message).expect("the message is hexadecimal");
        for [_, other, ..] in VECTORS.iter().filter(|[_, other, ..]| *other != public) {
            let other = PublicKey::from_hexadecimal(other).expect("it is a key");
            assert!(!other.verifies(&message, &bytes(signature)));
        }
        message.push(0);
        assert!(!key.verifies(&message, &bytes(signature)));
    }
}

#[test]
fn a_key_of_small_order_verifies_nothing() {
    // RFC 8032, section 5.1.4: the neutral element, (0, 1), is encoded as a one and noughts. With it as key and as the signature’s
    // point, and nought as its scalar, the equation of section 5.1.7 holds for every message.
    let mut neutral = [0; 32];
    neutral[0] = 1;
    let mut signature = [0; 64];
    signature[0] = 1;
    assert!(!PublicKey::new(neutral).verifies(b"anything", &signature));
}

#[test]
fn a_signature_in_a_second_form_is_none() {
    // RFC 8032, section 5.1.7: a scalar must be less than the order of the group, 2^252 + 27742317777372353535851937790883648493.
    let order: [u8; 32] = bytes("edd3f55c1a631258d69cf7a2def9de1400000000000000000000000000000010");
    let [_, public, message, signature] = VECTORS[1];
    let mut signature: [u8; 64] = bytes(signature);
    let mut carry = 0_u16;
    for (byte, more) in signature[32..].iter_mut().zip(order) {
        let sum = u16::from(*byte) + u16::from(more) + carry;
        (*byte, carry) = (sum.to_le_bytes()[0], sum >> 8);
    }
    let key = PublicKey::from_hexadecimal(public).expect("it is a key");
    assert!(!key.verifies(&from_hexadecimal(message).expect("it is hexadecimal"), &signature));
}

#[test]
fn a_fingerprint_is_short_and_tells_keys_apart() {
    let prints = VECTORS.map(|[_, public, ..]| fingerprint(&PublicKey::from_hexadecimal(public).expect("it is a key")));
    // Made with Python's hashlib and base64.b32encode from the same keys.
    assert_eq!(
        prints,
        [
            "EH7D-DX5B-KSRG-CYTL-7BKA-I36S",
            "HH3R-HUFG-IQST-6BCS-SQQ3-T5I3",
            "3LAH-HYAS-HPPK-LHOZ-WO62-TT3A",
            "L6NS-I7RK-MVDR-T4MY-4TZE-DVVQ"
        ]
    );
}

#[test]
fn what_has_not_32_bytes_is_no_key() {
    assert_eq!(PublicKey::from_bytes(&[0; 31]), None);
    assert_eq!(PublicKey::from_bytes(&[0; 33]), None);
    for digits in ["", "0", &"0".repeat(63), &"0".repeat(65), &"A".repeat(64), &"é".repeat(32)] {
        assert_eq!(PublicKey::from_hexadecimal(digits), None, "{digits}");
    }
}
