//! The stored form of a value: a version, a checksum, then JSON.

use super::BookError;
use serde::{Serialize, de::DeserializeOwned};

/// Bytes before the JSON: version, then CRC-32 of version and JSON.
const HEAD: usize = 5;

/// Stores `value` as `version`.
pub fn pack<T: Serialize>(version: u8, value: &T) -> Result<Vec<u8>, BookError> {
    let json = serde_json::to_string(value)
        .map_err(|error| BookError::Damaged { detail: format!("a value that has no stored form: {error}") })?;
    Ok(wrap(version, &json))
}

/// Reads a value of `version`.
pub fn unpack<T: DeserializeOwned>(version: u8, what: &str, bytes: &[u8]) -> Result<T, BookError> {
    let (found, json) = unwrap(bytes).ok_or_else(|| damaged(what))?;
    if found > version {
        return Err(BookError::Newer { found: found.into(), known: version.into() });
    }
    // serde's message could quote the content, which is personal: it is left out.
    serde_json::from_str(json).map_err(|_| damaged(what))
}

fn damaged(what: &str) -> BookError {
    BookError::Damaged { detail: format!("a row of {what}") }
}

/// Version and JSON to bytes.
pub fn wrap(version: u8, json: &str) -> Vec<u8> {
    let mut bytes = Vec::with_capacity(HEAD + json.len());
    bytes.push(version);
    bytes.extend_from_slice(&checksum(version, json.as_bytes()).to_be_bytes());
    bytes.extend_from_slice(json.as_bytes());
    bytes
}

/// Bytes to version and JSON, if the checksum holds.
pub fn unwrap(bytes: &[u8]) -> Option<(u8, &str)> {
    let (head, json) = bytes.split_at_checked(HEAD)?;
    let (version, sum) = head.split_first()?;
    let sum = u32::from_be_bytes(sum.try_into().ok()?);
    (sum == checksum(*version, json)).then_some(())?;
    Some((*version, std::str::from_utf8(json).ok()?))
}

fn checksum(version: u8, json: &[u8]) -> u32 {
    let mut sum = crc32fast::Hasher::new();
    sum.update(&[version]);
    sum.update(json);
    sum.finalize()
}

/// Bytes as hexadecimal digits: for keys in a backup and files in stored messages.
pub mod hex_bytes {
    use serde::{Deserialize, Deserializer, Serializer, de::Error};

    /// To digits.
    pub fn encode(bytes: &[u8]) -> String {
        use std::fmt::Write;
        bytes.iter().fold(String::with_capacity(bytes.len() * 2), |mut text, byte| {
            let _ = write!(text, "{byte:02x}"); // writing to a String cannot fail
            text
        })
    }

    /// From digits.
    pub fn decode(text: &str) -> Option<Vec<u8>> {
        let digit = |byte: u8| char::from(byte).to_digit(16).and_then(|digit| u8::try_from(digit).ok());
        let (pairs, []) = text.as_bytes().as_chunks::<2>() else { return None };
        pairs.iter().map(|[high, low]| Some(digit(*high)? << 4 | digit(*low)?)).collect()
    }

    /// For `#[serde(with)]`.
    pub fn serialize<S: Serializer>(bytes: &[u8], serializer: S) -> Result<S::Ok, S::Error> {
        serializer.serialize_str(&encode(bytes))
    }

    /// For `#[serde(with)]`.
    pub fn deserialize<'de, D: Deserializer<'de>>(deserializer: D) -> Result<Vec<u8>, D::Error> {
        let text = String::deserialize(deserializer)?;
        decode(&text).ok_or_else(|| D::Error::custom("not hexadecimal"))
    }
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::*;

    #[test]
    fn one_flipped_bit_anywhere_is_noticed() {
        let good = pack(1, &"eleven people").unwrap();
        for byte in 0..good.len() {
            for bit in 0..8 {
                let mut bad = good.clone();
                bad[byte] ^= 1 << bit;
                assert!(unpack::<String>(u8::MAX, "test", &bad).is_err(), "byte {byte} bit {bit}");
            }
        }
    }

    #[test]
    fn a_value_of_a_later_version_is_refused_by_name() {
        let later = pack(9, &1).unwrap();
        assert!(matches!(unpack::<i32>(1, "test", &later), Err(BookError::Newer { found: 9, known: 1 })));
    }

    #[test]
    fn hexadecimal_reads_back_and_refuses_the_rest() {
        let bytes: Vec<u8> = (0..=255).collect();
        assert_eq!(hex_bytes::decode(&hex_bytes::encode(&bytes)), Some(bytes));
        assert_eq!(hex_bytes::decode("abc"), None);
        assert_eq!(hex_bytes::decode("zz"), None);
    }
}
