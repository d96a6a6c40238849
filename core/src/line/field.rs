//! The fields of a draft, in one table: names, what belongs in them, whether they must be filled.

/// One field of a [`super::LineDraft`].
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Field {
    /// The name, the same in every language and in case files.
    pub name: &'static str,
    /// What belongs in it.
    pub meaning: &'static str,
    /// Whether a line needs it.
    pub needed: bool,
}

const fn needed(name: &'static str, meaning: &'static str) -> Field {
    Field { name, meaning, needed: true }
}

const fn optional(name: &'static str, meaning: &'static str) -> Field {
    Field { name, meaning, needed: false }
}

/// Every field. Lists are separated by semicolons.
pub const FIELDS: &[Field] = &[
    needed("name", "short name of the line, unique on the vehicle"),
    needed("od", "outside diameter of the tube, with unit"),
    needed("wall", "wall of the tube, with unit"),
    needed("material", "material by name"),
    optional("min_radius", "smallest bend radius that the tube's maker gives, with unit"),
    optional("min_radius_source", "where that radius was read"),
    optional("straights", "lengths tangent to tangent, A to B; one of the three ways must be filled"),
    optional("legs", "lengths corner to corner, A to B"),
    optional("outer_legs", "lengths over the outer edges, outer corner to outer corner, A to B"),
    optional("bends", "bend angles, A to B, with unit; empty for a straight line"),
    optional("rotations", "turn of the bend plane at each bend but the first, with unit"),
    optional("radius", "centerline radius as formed, one for all bends or one each, with unit"),
    optional("making", "former, hand or mandrel, one for all bends or one each; empty: former"),
    optional("deferred", "what the line waits for; empty: nothing"),
    needed("a_thread", "thread of the nut at end A, or unknown"),
    needed("a_nut_length", "length of the nut at end A, with unit"),
    needed("a_nut_bore", "bore of the nut at end A, with unit"),
    needed("a_nose", "nose of the nut at end A, or unknown"),
    needed("a_flare", "form of the flare at end A"),
    optional("a_flare_diameter", "diameter of a finished flare like it, measured on a test piece, with unit"),
    optional("a_port", "what end A is screwed into"),
    optional("a_port_thread", "thread of that port, or unknown"),
    optional("a_seat", "seat of that port, or unknown"),
    optional("a_port_thread_depth", "depth of that port to the end of its full thread, with unit"),
    optional("a_seat_depth", "depth of that port to the middle of its seat, with unit"),
    optional(
        "a_nut_thread_length",
        "length of the thread of the nut at end A, from under its head, with unit",
    ),
    optional("a_nut_lead", "unthreaded nose of that nut, with unit; 0 mm where the thread runs to the nose"),
    optional("a_across_flats", "hexagon of the nut at end A across its flats, with unit"),
    optional(
        "a_loaded",
        "what goes on from end A before the nut, in that order; which way round in brackets",
    ),
    optional("a_holes", "diameters of holes that end A goes through, with unit"),
    optional("a_in_place", "yes where end A is flared on the vehicle"),
    needed("b_thread", "thread of the nut at end B, or unknown"),
    needed("b_nut_length", "length of the nut at end B, with unit"),
    needed("b_nut_bore", "bore of the nut at end B, with unit"),
    needed("b_nose", "nose of the nut at end B, or unknown"),
    needed("b_flare", "form of the flare at end B"),
    optional("b_flare_diameter", "diameter of a finished flare like it, measured on a test piece, with unit"),
    optional("b_port", "what end B is screwed into"),
    optional("b_port_thread", "thread of that port, or unknown"),
    optional("b_seat", "seat of that port, or unknown"),
    optional("b_port_thread_depth", "depth of that port to the end of its full thread, with unit"),
    optional("b_seat_depth", "depth of that port to the middle of its seat, with unit"),
    optional(
        "b_nut_thread_length",
        "length of the thread of the nut at end B, from under its head, with unit",
    ),
    optional("b_nut_lead", "unthreaded nose of that nut, with unit; 0 mm where the thread runs to the nose"),
    optional("b_across_flats", "hexagon of the nut at end B across its flats, with unit"),
    optional(
        "b_loaded",
        "what goes on from end B before the nut, in that order; which way round in brackets",
    ),
    optional("b_holes", "diameters of holes that end B goes through, with unit"),
    optional("b_in_place", "yes where end B is flared on the vehicle"),
];

/// The field of a name.
pub(super) fn find(name: &str) -> Option<&'static Field> {
    FIELDS.iter().find(|field| field.name == name)
}
