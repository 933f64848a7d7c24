//! Changes of what an office keeps of its kitchens and of the school year.

use super::names::unique_name;
use engine::calendar::{Calendar, Cycle, CycleId, OnBreak};
use engine::production::{KitchenWay, Pack, Production, Site, SiteId, SiteMeals, StatedServings};
use engine::recipe::RecipeId;
use engine::units::Servings;
use engine::week::{Date, Service, WeekId};

/// One change of the kitchens.
#[derive(Debug, Clone, PartialEq)]
pub enum ProductionEdit {
    /// Add a school of this name; its id is made unique.
    AddSite(String),
    /// Take a school out, with all that is stated for it.
    RemoveSite(SiteId),
    /// Another name; the school keeps its id.
    SiteName(SiteId, String),
    /// How many meals of a service a school usually serves.
    SiteMeals(SiteId, Service, Servings),
    /// State the servings of a choice at a school on a day, or its share again.
    State {
        /// Which day.
        date: Date,
        /// Which meal.
        service: Service,
        /// Which recipe.
        recipe: RecipeId,
        /// Which school.
        site: SiteId,
        /// How many; nothing for its share.
        servings: Option<Servings>,
    },
    /// Add a pack.
    AddPack(Pack),
    /// Change a pack.
    Pack(usize, Pack),
    /// Take a pack out.
    RemovePack(usize),
    /// How a recipe is cooked.
    Way(KitchenWay),
    /// Another scale.
    Scale(String),
}

/// One change of the school year.
#[derive(Debug, Clone, PartialEq)]
pub enum CalendarEdit {
    /// Mark a day as one without school.
    Close(Date, String),
    /// Take that mark off.
    Open(Date),
    /// Add an empty cycle; its id is made unique.
    AddCycle(String),
    /// Take a cycle out; its weeks stay in the book.
    RemoveCycle(CycleId),
    /// Another title.
    CycleTitle(CycleId, String),
    /// Other weeks.
    CycleWeeks(CycleId, Vec<WeekId>),
    /// What a week without school does to it.
    OnBreak(CycleId, OnBreak),
}

pub(super) fn production(kept: &mut Production, edit: ProductionEdit) -> Option<()> {
    match edit {
        ProductionEdit::AddSite(name) => {
            let taken = kept.sites.iter().map(|site| site.id.0.as_str());
            let id = SiteId(unique_name(&name, "school", taken));
            kept.sites.push(Site {
                id,
                name,
                serves: Vec::new(),
            });
        }
        ProductionEdit::RemoveSite(id) => {
            kept.sites.retain(|site| site.id != id);
            kept.stated.retain(|stated| stated.site != id);
        }
        ProductionEdit::SiteName(id, name) => site(kept, &id)?.name = name,
        ProductionEdit::SiteMeals(id, service, meals) => {
            let serves = &mut site(kept, &id)?.serves;
            serves.retain(|one| one.service != service);
            if meals > Servings::ZERO {
                serves.push(SiteMeals { service, meals });
                serves.sort_by(|one, other| one.service.cmp(&other.service));
            }
        }
        ProductionEdit::State {
            date,
            service,
            recipe,
            site,
            servings,
        } => {
            kept.stated.retain(|one| {
                one.date != date
                    || one.service != service
                    || one.recipe != recipe
                    || one.site != site
            });
            kept.stated.extend(servings.map(|servings| StatedServings {
                date,
                service,
                recipe,
                site,
                servings,
            }));
        }
        ProductionEdit::AddPack(pack) => kept.packs.push(pack),
        ProductionEdit::Pack(index, pack) => *kept.packs.get_mut(index)? = pack,
        ProductionEdit::RemovePack(index) => {
            if index < kept.packs.len() {
                kept.packs.remove(index);
            }
        }
        ProductionEdit::Way(way) => {
            kept.ways.retain(|other| other.recipe != way.recipe);
            if way.pan.is_some() || way.minutes.is_some() {
                kept.ways.push(way);
            }
        }
        ProductionEdit::Scale(scale) => kept.scale = Some(scale),
    }
    Some(())
}

fn site<'a>(kept: &'a mut Production, id: &SiteId) -> Option<&'a mut Site> {
    kept.sites.iter_mut().find(|site| site.id == *id)
}

pub(super) fn calendar(kept: &mut Calendar, edit: CalendarEdit) -> Option<()> {
    match edit {
        CalendarEdit::Close(date, words) => kept.close(date, words),
        CalendarEdit::Open(date) => kept.open(date),
        CalendarEdit::AddCycle(title) => {
            let taken = kept.cycles.iter().map(|cycle| cycle.id.0.as_str());
            kept.cycles.push(Cycle {
                id: CycleId(unique_name(&title, "cycle", taken)),
                title,
                weeks: Vec::new(),
                on_break: OnBreak::default(),
            });
        }
        CalendarEdit::RemoveCycle(id) => kept.cycles.retain(|cycle| cycle.id != id),
        CalendarEdit::CycleTitle(id, title) => cycle(kept, &id)?.title = title,
        CalendarEdit::CycleWeeks(id, weeks) => cycle(kept, &id)?.weeks = weeks,
        CalendarEdit::OnBreak(id, on_break) => cycle(kept, &id)?.on_break = on_break,
    }
    Some(())
}

fn cycle<'a>(kept: &'a mut Calendar, id: &CycleId) -> Option<&'a mut Cycle> {
    kept.cycles.iter_mut().find(|cycle| cycle.id == *id)
}

/// Where a change of the kitchens types, if it types.
pub(super) fn production_stroke(edit: &ProductionEdit) -> Option<String> {
    match edit {
        ProductionEdit::SiteName(id, _) => Some(format!("name {id:?}")),
        ProductionEdit::SiteMeals(id, service, _) => Some(format!("meals {id:?} {service:?}")),
        ProductionEdit::State {
            date,
            service,
            recipe,
            site,
            ..
        } => Some(format!("stated {date} {service:?} {recipe:?} {site:?}")),
        ProductionEdit::Pack(index, _) => Some(format!("pack {index}")),
        ProductionEdit::Way(way) => Some(format!("way {:?}", way.recipe)),
        _ => None,
    }
}

/// Where a change of the school year types, if it types.
pub(super) fn calendar_stroke(edit: &CalendarEdit) -> Option<String> {
    match edit {
        CalendarEdit::Close(date, _) => Some(format!("closed {date}")),
        CalendarEdit::CycleTitle(id, _) => Some(format!("title {id:?}")),
        _ => None,
    }
}
