//! Where the dataset's values come from and how sure they are. The first
//! analysis does without; it is fetched when a view asks for it.

use crate::page::painted;
use crate::tables::{self, Tables};
use std::rc::Rc;
use yew::prelude::*;

/// How far fetching has come.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum EvidenceState {
    /// No view has asked.
    Unasked,
    /// It is on its way.
    Going,
    /// The tables have it.
    Done,
    /// It did not come, or is damaged.
    Failed(String),
}

/// How a view asks for it.
#[derive(Debug, Clone, PartialEq)]
pub struct EvidenceHandle {
    /// How far fetching has come.
    pub state: EvidenceState,
    ask: Callback<()>,
}

impl EvidenceHandle {
    /// Has it fetched, unless it is there or on its way.
    pub fn ask(&self) {
        self.ask.emit(());
    }
}

/// The tables, with the evidence once a view has asked and it has come.
#[hook]
pub fn use_evidence(first: &Rc<Tables>) -> (Rc<Tables>, EvidenceHandle) {
    let tables = use_state(|| first.clone());
    let state = use_state(|| EvidenceState::Unasked);
    let ask = {
        let (tables, state) = (tables.clone(), state.clone());
        Callback::from(move |()| {
            if !matches!(*state, EvidenceState::Unasked | EvidenceState::Failed(_)) {
                return;
            }
            state.set(EvidenceState::Going);
            let (tables, state) = (tables.clone(), state.clone());
            wasm_bindgen_futures::spawn_local(async move {
                // The figures come first.
                painted().await;
                match tables::with_provenance(&tables).await {
                    Ok(more) => {
                        tables.set(more);
                        state.set(EvidenceState::Done);
                    }
                    Err(problem) => state.set(EvidenceState::Failed(problem)),
                }
            });
        })
    };
    let handle = EvidenceHandle {
        state: (*state).clone(),
        ask,
    };
    ((*tables).clone(), handle)
}
