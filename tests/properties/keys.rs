//! Single keys: no two actions share one, and what is kept comes back.

use std::path::PathBuf;

use lashwright::job::kept::keys as kept_keys;
use lashwright::store::{read_within, write_whole};
use lashwright::view::keys::KeysError;
use lashwright::view::{Action, KeyName, Keys, Place};
use proptest::prelude::*;

/// Two actions with one key at one place, if there are any.
fn conflict(keys: &Keys) -> Option<[Action; 2]> {
    let all: Vec<Action> = Action::all().collect();
    Place::ALL.into_iter().find_map(|place| {
        let here: Vec<Action> = all.iter().copied().filter(|action| action.acts_at(place)).collect();
        here.iter().enumerate().find_map(|(i, one)| {
            let other = here[i + 1..]
                .iter()
                .find(|other| keys.key(*one).is_some() && keys.key(*one) == keys.key(**other))?;
            Some([*one, *other])
        })
    })
}

fn named(name: &str) -> KeyName {
    KeyName::named(name).unwrap_or_else(|| panic!("{name} is a key"))
}

#[test]
fn usual_keys_have_no_conflict_at_any_place() {
    let keys = Keys::default();
    assert_eq!(conflict(&keys), None, "each key asks for one thing");
    for action in Action::all() {
        assert!(!action.places().is_empty(), "{action} acts somewhere");
        let key = keys.key(action).unwrap_or_else(|| panic!("{action} has a key"));
        for place in action.places() {
            assert_eq!(keys.action_at(*place, key), Some(action), "{action} at {place:?}");
        }
        assert_eq!(Action::named(&action.name()), Some(action), "found again by its name");
    }
    let mut words: Vec<String> = Action::all().map(|action| action.to_string()).collect();
    words.sort();
    words.dedup();
    assert_eq!(words.len(), Action::all().count(), "each action has words of its own");
}

#[test]
fn a_key_that_is_taken_is_refused_by_name_and_nothing_changes() {
    let mut keys = Keys::default();
    let taken = keys
        .set(Action::Turn, Some(named("R")))
        .expect_err("R rocks the ring gear");
    assert_eq!(taken.other, Action::Rock);
    assert_eq!(
        taken.to_string(),
        "The key R belongs to “Rock the ring gear, or stop”. Press another key, or change that one first"
    );
    assert_eq!(keys, Keys::default(), "nothing has changed");
    // At the bench and in the tooth room, no key is pressed for both.
    keys.set(Action::KeepAsOther, Some(named("R"))).expect("acts elsewhere");
    assert_eq!(keys.action_at(Place::ToothRoom, named("R")), Some(Action::KeepAsOther));
    assert_eq!(keys.action_at(Place::Bench, named("R")), Some(Action::Rock));
    // The key of both places is taken in either.
    keys.set(Action::SavePicture, Some(named("T")))
        .expect_err("T leads back from the tooth room");
    keys.set(Action::Rock, None).expect("turned off");
    keys.set(Action::Turn, Some(named("R"))).expect("free now");
    assert_eq!(keys.action_at(Place::Bench, named("R")), Some(Action::Turn));
    assert_eq!(
        keys.action_at(Place::Bench, named("Space")),
        None,
        "the old key is quiet"
    );
}

#[test]
fn only_what_differs_is_written_and_what_is_missing_is_usual() {
    let mut keys = Keys::default();
    keys.set(Action::Rock, Some(named("G"))).expect("free");
    keys.set(Action::Turn, None).expect("off");
    assert_eq!(
        keys.to_json(),
        "{\n  \"format\": \"lashwright-keys/1\",\n  \"keys\": [\n    {\n      \"action\": \"turn-pinion\",\n      \
         \"key\": \"off\"\n    },\n    {\n      \"action\": \"rock-ring-gear\",\n      \"key\": \"G\"\n    }\n  ]\n}\n"
    );
    // A later program with an action more, whose usual key is another's here, does not refuse the file.
    let read = Keys::from_json(sheet(r#"{"action": "rock-ring-gear", "key": "F"}"#).as_bytes()).expect("good");
    assert_eq!(read.key(Action::Rock), Some(named("F")));
    assert_eq!(read.key(Action::Flat), None, "its usual key is another's now");
    assert_eq!(conflict(&read), None);
}

fn sheet(lines: &str) -> String {
    format!(r#"{{"format": "lashwright-keys/1", "keys": [{lines}]}}"#)
}

#[test]
fn bad_lists_are_refused_with_their_reason() {
    let refused = |text: &str| match Keys::from_json(text.as_bytes()) {
        Err(error) => error,
        Ok(keys) => panic!("{text} was read as {keys:?}"),
    };
    for text in ["", "{", "[]", "null", r#"{"format": "lashwright-keys/1"}"#] {
        assert!(matches!(refused(text), KeysError::Json(_)), "{text}");
    }
    let more = r#"{"format": "lashwright-keys/1", "keys": [], "more": 1}"#;
    assert!(matches!(refused(more), KeysError::Json(_)), "an unknown field");
    let no_key = sheet(r#"{"action": "rock-ring-gear"}"#);
    assert!(
        matches!(refused(&no_key), KeysError::Json(_)),
        "no key is not a key turned off"
    );
    for (text, words) in [
        (
            r#"{"format": "lashwright-keys/2", "keys": []}"#.to_owned(),
            "it calls itself \"lashwright-keys/2\", and only \"lashwright-keys/1\" is known",
        ),
        (
            sheet(r#"{"action": "juggle", "key": "G"}"#),
            "there is no action \"juggle\"",
        ),
        (
            sheet(r#"{"action": "rock-ring-gear", "key": "Enter"}"#),
            "\"Enter\" cannot be a key for “Rock the ring gear, or stop”",
        ),
        (
            sheet(r#"{"action": "nearer", "key": "G"}, {"action": "nearer", "key": "H"}"#),
            "“Zoom in” is listed twice",
        ),
        (
            sheet(r#"{"action": "nearer", "key": "G"}, {"action": "farther", "key": "G"}"#),
            "G is the key of both “Zoom in” and “Zoom out”",
        ),
    ] {
        assert_eq!(refused(&text).to_string(), words, "{text}");
    }
    let long = sheet(&format!(r#"{{"action": "{}\u202e", "key": "G"}}"#, "x".repeat(5_000)));
    assert!(
        refused(&long).to_string().len() < 100,
        "no message repeats a whole file"
    );
}

/// An empty folder that is taken away at the end.
struct Folder(PathBuf);

impl Folder {
    fn new(name: &str) -> Self {
        let path = std::env::temp_dir().join(format!("lashwright-keys-{name}-{}", std::process::id()));
        std::fs::create_dir_all(&path).expect("a folder");
        Self(path)
    }
}

impl Drop for Folder {
    fn drop(&mut self) {
        // A folder that stays behind does no harm.
        drop(std::fs::remove_dir_all(&self.0));
    }
}

#[test]
fn kept_keys_come_back_and_damaged_ones_are_told() {
    let folder = Folder::new("kept");
    // Below a folder that is not there yet.
    let below = folder.0.join("lashwright");
    assert_eq!(
        kept_keys::read(&below).expect("nothing is kept yet"),
        Keys::default(),
        "usual"
    );
    let mut keys = Keys::default();
    keys.set(Action::Rock, Some(named("Slash"))).expect("free");
    kept_keys::write(&below, &keys).expect("written");
    assert_eq!(kept_keys::read(&below).expect("read"), keys);
    let file = below.join("keys.json");
    let bytes = read_within(&file, Keys::MOST_BYTES).expect("is there");
    assert_eq!(bytes, keys.to_json().into_bytes());
    let lying = std::fs::read_dir(&below).expect("a folder").count();
    assert_eq!(lying, 1, "nothing half-written is left behind");

    write_whole(&file, b"{\"format\": \"lashwright-ke").expect("written");
    let said = kept_keys::read(&below).expect_err("torn").to_string();
    assert!(
        said.contains("keys.json") && said.contains("not part of a list of keys in JSON"),
        "{said}"
    );
    write_whole(&file, " ".repeat(Keys::MOST_BYTES + 1).as_bytes()).expect("written");
    let said = kept_keys::read(&below).expect_err("too large").to_string();
    assert!(said.contains("more than 16384 bytes"), "{said}");

    let other = Folder::new("a-folder-in-its-place");
    std::fs::create_dir_all(other.0.join("keys.json")).expect("a folder");
    kept_keys::read(&other.0).expect_err("a folder is no file");
    kept_keys::write(&other.0, &keys).expect_err("and is not written over");
}

fn any_keys() -> impl Strategy<Value = Keys> {
    let actions: Vec<Action> = Action::all().collect();
    let names: Vec<KeyName> = KeyName::all().collect();
    let step = (
        proptest::sample::select(actions),
        proptest::option::weighted(0.8, proptest::sample::select(names)),
    );
    proptest::collection::vec(step, 0..60).prop_map(|steps| {
        let mut keys = Keys::default();
        for (action, key) in steps {
            let before = keys.clone();
            match keys.set(action, key) {
                Ok(()) => assert_eq!(keys.key(action), key, "{action}"),
                Err(taken) => {
                    assert_eq!(keys, before, "a refusal changes nothing");
                    assert_eq!(Some(taken.key), key, "{action}");
                    assert_eq!(keys.key(taken.other), key, "{action}");
                }
            }
        }
        keys
    })
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 2_000, ..ProptestConfig::default() })]

    #[test]
    fn keys_go_to_text_and_back(keys in any_keys()) {
        prop_assert_eq!(conflict(&keys), None);
        let text = keys.to_json();
        prop_assert!(text.len() <= Keys::MOST_BYTES);
        let read = Keys::from_json(text.as_bytes());
        prop_assert!(read.is_ok(), "{:?}: {}", read, text);
        prop_assert_eq!(read.expect("good"), keys);
    }

    /// Any bytes in the middle of a good list: refused, or keys without a conflict; never a panic.
    #[test]
    fn damaged_lists_never_panic(
        keys in any_keys(),
        at in any::<proptest::sample::Index>(),
        out in 0_usize..30,
        piece in prop_oneof![
            proptest::collection::vec(any::<u8>(), 0..20),
            "(\"[A-Z]\"|\\{|\\}|\\[|,|:|\"key\"|\"off\"|nearer|[0-9]){0,4}".prop_map(String::into_bytes),
        ],
    ) {
        let mut bytes = keys.to_json().into_bytes();
        let at = at.index(bytes.len());
        let end = (at + out).min(bytes.len());
        bytes.splice(at..end, piece);
        match Keys::from_json(&bytes) {
            Ok(read) => prop_assert_eq!(conflict(&read), None),
            Err(error) => prop_assert!(error.to_string().len() < 200, "{}", error),
        }
    }
}
