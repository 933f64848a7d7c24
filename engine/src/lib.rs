//! Exact, unit-aware nutrient computation for school meals.
