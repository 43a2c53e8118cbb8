//! Keys in the session: changed, refused, kept in a folder and read from it. The folder is always one of the test's own.

use bevy::prelude::*;
use lashwright::app::{Refusal, Session, order_plugin, session_plugin};
use lashwright::job::kept::keys as kept_keys;
use lashwright::store::{read_within, write_whole};
use lashwright::view::{Action, Command, KeyName, KeyTaken, Keys};

use crate::folder::Folder;
use crate::session::{ask, of};

fn key(name: &str) -> KeyName {
    KeyName::named(name).unwrap_or_else(|| panic!("{name} is a key"))
}

fn app(session: Session) -> App {
    let mut app = App::new();
    app.add_plugins((MinimalPlugins, order_plugin, session_plugin))
        .insert_resource(session);
    app.update();
    app
}

fn session_in(folder: &Folder) -> Session {
    Session::new(Vec::new()).with_keys_in(Some(folder.path().to_owned()))
}

#[test]
fn a_changed_key_is_there_next_time() {
    let folder = Folder::new("keys");
    let mut app = app(session_in(&folder));
    assert_eq!(of(&app).view().keys, &Keys::default());
    assert_eq!(
        folder.files().len(),
        0,
        "nothing is written before something is changed"
    );
    ask(&mut app, Command::SetKey(Action::Rock, Some(key("G"))));
    ask(&mut app, Command::SetKey(Action::Turn, None));
    assert_eq!(of(&app).view().keys.key(Action::Rock), Some(key("G")));
    assert!(!of(&app).keys_changed(), "kept at once");
    assert_eq!(of(&app).view().keys_said, None);
    let next = session_in(&folder);
    assert_eq!(next.view().keys, of(&app).view().keys, "as they were left");
    assert_eq!(next.view().keys.key(Action::Turn), None);

    ask(&mut app, Command::UsualKeys);
    assert_eq!(of(&app).view().keys, &Keys::default());
    assert_eq!(session_in(&folder).view().keys, &Keys::default(), "kept as well");
}

#[test]
fn a_taken_key_is_refused_and_nothing_is_written() {
    let folder = Folder::new("keys-taken");
    let mut session = session_in(&folder);
    let refused = session.apply(Command::SetKey(Action::Turn, Some(key("R"))));
    let taken = KeyTaken {
        key: key("R"),
        other: Action::Rock,
    };
    assert_eq!(refused, Err(Refusal::KeyTaken(taken)));
    assert!(!session.keys_changed(), "nothing to keep");
    assert_eq!(session.view().keys, &Keys::default());
    session
        .apply(Command::SetKey(Action::Turn, Some(key("G"))))
        .expect("free");
    assert!(session.keys_changed(), "to be kept");
    assert_eq!(folder.files().len(), 0, "by whoever keeps it");
}

#[test]
fn a_damaged_file_is_told_and_the_usual_keys_are_used() {
    let folder = Folder::new("keys-damaged");
    let file = folder.path().join("keys.json");
    write_whole(
        &file,
        br#"{"format": "lashwright-keys/1", "keys": [{"action": "juggle", "key": "G"}]}"#,
    )
    .expect("written");
    let session = session_in(&folder);
    let view = session.view();
    assert_eq!(view.keys, &Keys::default());
    let said = view.keys_said.expect("it is said");
    assert!(
        said.contains("keys.json") && said.contains("there is no action \"juggle\""),
        "{said}"
    );
    assert_eq!(view.start.said, Some(said), "on the page that comes first too");

    // A change is written over it.
    let mut app = app(session);
    ask(&mut app, Command::SetKey(Action::Rock, Some(key("G"))));
    assert_eq!(of(&app).view().keys_said, None, "all is well again");
    let kept = kept_keys::read(folder.path()).expect("whole");
    assert_eq!(&kept, of(&app).view().keys);
    assert_eq!(
        read_within(&file, Keys::MOST_BYTES).expect("read"),
        kept.to_json().into_bytes()
    );
}

#[test]
fn what_cannot_be_kept_is_said_and_used_all_the_same() {
    let folder = Folder::new("keys-not-kept");
    // A folder stands where the file belongs.
    std::fs::create_dir_all(folder.path().join("keys.json")).expect("a folder");
    for (session, words) in [
        (session_in(&folder), "Keys are not kept: cannot write"),
        (
            Session::new(Vec::new()).with_keys_in(None),
            "the system names no folder",
        ),
    ] {
        let mut app = app(session);
        ask(&mut app, Command::SetKey(Action::Rock, Some(key("G"))));
        let view = of(&app).view();
        assert_eq!(view.keys.key(Action::Rock), Some(key("G")), "used");
        let said = view.keys_said.expect("it is said");
        assert!(said.contains(words), "{said}");
        assert!(!of(&app).keys_changed(), "not tried again at every frame");
    }
}
