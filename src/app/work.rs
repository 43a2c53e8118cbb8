//! Work that takes longer than a frame, done on other threads: new gears, contact to the end, operations, and the list of
//! attempts.
//!
//! The session says what is to be done ([`Session::next_job`]) and takes what came of it; what nobody wants any more it
//! puts aside by its revision. One job of a kind is under way at a time, so that a drag does not pile up work.

use bevy::prelude::*;
use bevy::tasks::{AsyncComputeTaskPool, Task, futures::check_ready};

use super::bench::{Looked, TaskOutcome};
use super::commands;
use super::order::AppSystems;
use super::session::Session;
use crate::view::{Done, Job};

/// The job under way.
#[derive(Default, Resource)]
pub(super) struct UnderWay(Option<Task<Done>>);

/// The task on the attempt under way.
#[derive(Default, Resource)]
pub(super) struct AtTheBench(Option<Task<TaskOutcome>>);

/// The reading of the folder of attempts under way.
#[derive(Default, Resource)]
pub(super) struct Looking(Option<Task<Looked>>);

/// Hands jobs out and takes results in.
pub(super) fn plugin(app: &mut App) {
    app.init_resource::<UnderWay>()
        .init_resource::<AtTheBench>()
        .init_resource::<Looking>()
        .add_systems(
            Update,
            (work, work_at_the_bench, look)
                .chain()
                .in_set(AppSystems::Simulate)
                .after(commands::turn_pinion),
        );
}

pub(super) fn work(mut under_way: ResMut<UnderWay>, mut session: ResMut<Session>) {
    if let Some(task) = &mut under_way.0 {
        let Some(done) = check_ready(task) else { return };
        under_way.0 = None;
        session.take(done);
    }
    if let Some(job) = session.next_job() {
        under_way.0 = Some(AsyncComputeTaskPool::get().spawn(async move { Job::run(job) }));
    }
}

/// One operation at a time, in the order in which they were asked for.
fn work_at_the_bench(mut under_way: ResMut<AtTheBench>, mut session: ResMut<Session>) {
    if let Some(task) = &mut under_way.0 {
        let Some(came) = check_ready(task) else { return };
        under_way.0 = None;
        session.take_task(came);
    }
    if let Some(task) = session.bypass_change_detection().next_task() {
        under_way.0 = Some(AsyncComputeTaskPool::get().spawn(async move { task.run() }));
    }
}

fn look(mut under_way: ResMut<Looking>, mut session: ResMut<Session>) {
    if let Some(task) = &mut under_way.0 {
        let Some(looked) = check_ready(task) else { return };
        under_way.0 = None;
        session.take_look(looked);
    }
    if let Some(look) = session.bypass_change_detection().next_look() {
        under_way.0 = Some(AsyncComputeTaskPool::get().spawn(async move { look.run() }));
    }
}
