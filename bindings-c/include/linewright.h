/*
 * linewright: cut lengths, marks, bend settings and bench cards for rigid hydraulic lines made by hand.
 *
 * Written by a test from bindings-c/src; do not edit.
 *
 * The contract, without exceptions:
 *
 * - A function that can fail returns an lw_status: LW_OK, or one of enum lw_code. Besides the codes that its comment
 *   names it can return LW_NULL_ARGUMENT, LW_TEXT_NOT_UTF8 and LW_INTERNAL_FAULT; one with an index
 *   LW_INDEX_OUT_OF_RANGE (indices count from 0); one that fills a buffer LW_SPACE_TOO_SMALL.
 * - Inputs come first, outputs last. An output is written only on success; only a needed size (need, need_points) is
 *   always written, and is 0 where there was nothing to size. Two outputs of one call must not be the same place.
 * - LW_NOT_KNOWN is an answer: the figure is not known, and the output keeps what it held.
 * - Text in is UTF-8 and ends in NUL. Text out goes into the caller's buffer `buf` of `cap` bytes; `need` receives
 *   the size needed, the NUL included. A cap of 0, for which buf may be NULL, asks for the size alone.
 * - A list in is a pointer and a count; for a count of 0 the pointer may be NULL.
 * - No other pointer may be NULL unless its comment says so; the error names it.
 * - A handle that a function gives out belongs to the caller, who frees it with the _free function of its type. Those
 *   accept NULL. A handle never refers to another: what it was made from may be freed at once.
 * - A function does not change what it takes as const. Handles may be used by any thread, but not by two at once if
 *   one of them changes or frees it.
 * - A yes or no is an int32_t of 1 or 0.
 * - lw_last_error_text and its kin describe the last failure on the calling thread.
 */


#ifndef LINEWRIGHT_H
#define LINEWRIGHT_H

#include <stddef.h>
#include <stdint.h>

/** The version that a program is compiled against; lw_version() is the one it runs with. */
#define LW_VERSION_MAJOR 0
#define LW_VERSION_MINOR 1
#define LW_VERSION_PATCH 0
/** Major x 1000000 + minor x 1000 + patch. */
#define LW_VERSION_NUMBER 1000

/** What a call or a finding says. The numbers never change and are never used again. */
enum lw_code {
    /** the call was answered */
    LW_OK = 0,
    /** a number has no unit */
    LW_UNIT_MISSING = 101,
    /** a value is empty, NaN or infinite */
    LW_NOT_A_NUMBER = 102,
    /** a comma or point can be a decimal sign or a thousands sign */
    LW_NUMBER_AMBIGUOUS = 103,
    /** a text is not of the form asked for */
    LW_UNREADABLE = 104,
    /** a quantity is of another kind, such as an angle for a length */
    LW_WRONG_KIND = 105,
    /** a size looks like a date; spreadsheets turn 3/16 into one */
    LW_DATE_IN_SIZE = 106,
    /** a value is outside its limits */
    LW_OUT_OF_RANGE = 107,
    /** a name is not in the list */
    LW_UNKNOWN_NAME = 108,
    /** a needed field is empty */
    LW_FIELD_MISSING = 109,
    /** the numbers of straights, bends, rotations and radii do not belong together */
    LW_COUNT_MISMATCH = 110,
    /** a thread is named without its pitch, or without its family */
    LW_THREAD_AMBIGUOUS = 111,
    /** a spanner size or a bare length stands where a thread belongs */
    LW_HEX_NOT_THREAD = 112,
    /** a bend is above 120 degrees: it may have been read as the included angle */
    LW_ANGLE_LARGE = 113,
    /** two fields say the same thing twice */
    LW_FIELDS_CONFLICT = 114,
    /** a length was measured round bends and nobody says how */
    LW_METHOD_MISSING = 115,
    /** a length is too short for its own bends, as one in another unit would be */
    LW_UNIT_IMPLAUSIBLE = 116,
    /** a bare fraction in a size field was read as inches because the import was told to */
    LW_ASSUMED_INCH = 117,
    /** a thread's designation contradicts itself */
    LW_THREAD_CONTRADICTION = 118,
    /** an internal thread stands where an external one belongs, or the other way round */
    LW_THREAD_SIDE = 119,
    /** two bends take more of a leg than the leg has */
    LW_STRAIGHT_NEGATIVE = 201,
    /** a bend of 180 degrees or more has no corner, so no legs */
    LW_NO_CORNER = 202,
    /** the points do not make a line */
    LW_PATH_DEGENERATE = 203,
    /** all lengths and distances agree, and the part is the other hand */
    LW_HAND_MISMATCH = 204,
    /** two descriptions of one line are not the same line */
    LW_PATHS_DIFFER = 205,
    /** an end straight is too short to be flared in either order */
    LW_BEND_IN_CLAMP = 301,
    /** an end straight is too short for its nut to seat and back off */
    LW_NUT_ON_BEND = 302,
    /** the straight between two bends is shorter than the former must hold */
    LW_BENDS_TOO_CLOSE = 303,
    /** a bend is tighter than the limit recorded for the tube */
    LW_RADIUS_TOO_SMALL = 304,
    /** a bend is tighter than the only public figure seen for such tube */
    LW_RADIUS_BELOW_SEEN = 305,
    /** no smallest radius is known for this tube, so none was checked */
    LW_RADIUS_LIMIT_UNKNOWN = 306,
    /** neither end can be trimmed and flared after bending, so the length forgives nothing */
    LW_TRIM_END_NONE = 307,
    /** a bend has another radius than the bench's former gives, so no setting is known */
    LW_NOT_THIS_FORMER = 308,
    /** the bench has no trial bends, so no setting is known */
    LW_SPRINGBACK_UNKNOWN = 309,
    /** the settings rest on trial bends at one angle only */
    LW_SPRINGBACK_WEAK = 310,
    /** a setting lies outside the angles of the trial bends */
    LW_SETTING_OUTSIDE_TRIALS = 311,
    /** the bench has no flare tool for this form, so the cut length is not known */
    LW_FLARE_TOOL_MISSING = 312,
    /** how much this flare shortens the tube is not known, and a figure of the plan needs it */
    LW_FLARE_NET_UNKNOWN = 313,
    /** how much this flare shortens the tube is assumed */
    LW_FLARE_NET_ASSUMED = 314,
    /** the nut's bore does not pass the tube */
    LW_NUT_BORE_SMALL = 315,
    /** the trial bends do not give a springback */
    LW_TRIALS_UNUSABLE = 316,
    /** the nut does not pass a hole that this end goes through */
    LW_HOLE_TOO_SMALL = 317,
    /** the size of the nut's hexagon is not known, so its way through a hole was not checked */
    LW_HEX_UNKNOWN = 318,
    /** the line waits for something; tube and parts are reserved, the cut is locked */
    LW_DEFERRED = 319,
    /** the tube stands out of the clamp less than it was set: it slipped back under the stroke */
    LW_FLARE_SLIPPED = 320,
    /** a clip position falls into a bend */
    LW_CLIP_IN_BEND = 321,
    /** the settings rest on mechanics and material data or on another prior, not on a trial bend */
    LW_SPRINGBACK_ESTIMATED = 322,
    /** the radius as formed was computed from the former's groove and material data, not measured */
    LW_RADIUS_ESTIMATED = 323,
    /** the settings rest on trial bends of another tube than this line's */
    LW_CALIBRATION_OTHER_TUBE = 324,
    /** the wall is thicker than any that public figures of this flare on this tube are for, so whether the nut's bore holds it is not known either */
    LW_FLARE_WALL_UNSEEN = 325,
    /** the nut's bore lets the flare through, or leaves no wall under its own thread */
    LW_NUT_BORE_LARGE = 326,
    /** the diameter of this flare on this tube is not known, and so neither whether the nut's bore holds it and the port's thread lets it in */
    LW_FLARE_SIZE_UNKNOWN = 327,
    /** the flare does not pass the thread of its port */
    LW_FLARE_TOO_WIDE = 328,
    /** the flare passes the thread of its port with some of their sizes only */
    LW_FLARE_WIDTH_CLOSE = 329,
    /** the diameter measured is that of no flare on this tube, or of another than the public figures have */
    LW_FLARE_SIZE_ODD = 330,
    /** the seat of a port is not known, so the flare form is not settled */
    LW_SEAT_UNKNOWN = 401,
    /** the flare does not belong to the seat */
    LW_FLARE_SEAT_MISMATCH = 402,
    /** a single 45 degree flare is not planned on a brake line */
    LW_SINGLE_45_REFUSED = 403,
    /** nut and port have different threads; that they turn together proves nothing */
    LW_THREAD_MISMATCH = 404,
    /** a thread is not known, so the fit is not known */
    LW_THREAD_UNKNOWN = 405,
    /** no port is recorded for an end, so neither thread nor seat was compared */
    LW_PORT_UNKNOWN = 406,
    /** the nut's nose does not belong to the flare */
    LW_NOSE_MISMATCH = 407,
    /** the form of the nut's nose is not known */
    LW_NOSE_UNKNOWN = 408,
    /** nut and port have different threads that turn together by hand and may hold on less than half of the thread */
    LW_THREAD_LOOKALIKE = 409,
    /** the nut comes to its end before it clamps the flare, or holds on hardly any thread */
    LW_CLAMP_MARGIN_NONE = 410,
    /** whether the nut clamps the flare before it comes to its end was not computed: a length is not known */
    LW_CLAMP_MARGIN_UNKNOWN = 411,
    /** a washer and a flare cannot both seal one joint */
    LW_WASHER_ON_FLARE = 412,
    /** a joint that washers seal has too few or too many of them */
    LW_WASHER_COUNT = 413,
    /** the thread of a port seems to go on far beyond its seat */
    LW_PORT_DEPTHS_ODD = 414,
    /** somebody accepted a finding that no person can lift */
    LW_NOT_LIFTABLE = 501,
    /** an acceptance names a finding that this plan does not have */
    LW_NOTHING_TO_LIFT = 502,
    /** a pointer is NULL */
    LW_NULL_ARGUMENT = 901,
    /** a text is not UTF-8 */
    LW_TEXT_NOT_UTF8 = 902,
    /** the caller's buffer is too small; nothing was written */
    LW_SPACE_TOO_SMALL = 903,
    /** an option struct does not state a size this library knows */
    LW_STRUCT_SIZE = 904,
    /** an index is past the end */
    LW_INDEX_OUT_OF_RANGE = 905,
    /** a fault inside the library was caught at its boundary */
    LW_INTERNAL_FAULT = 906,
    /** the figure asked for is not known */
    LW_NOT_KNOWN = 907,
};

/**
 * The ways to the allowance of a flare, the one that wins first.
 */
typedef struct lw_allowances lw_allowances;

/**
 * A bench.
 */
typedef struct lw_bench lw_bench;

/**
 * The wall of a tube bent to a centerline radius.
 */
typedef struct lw_bent_wall lw_bent_wall;

/**
 * Trial bends with the tube and the former they were made with, a date and a revision.
 */
typedef struct lw_calibration lw_calibration;

/**
 * What changed from one plan to another.
 */
typedef struct lw_changes lw_changes;

/**
 * A tube at its worst size as an ideal cylinder, straight or bent.
 */
typedef struct lw_cylinder lw_cylinder;

/**
 * A line as it was typed.
 */
typedef struct lw_draft lw_draft;

/**
 * What is at one end of a line.
 */
typedef struct lw_end lw_end;

/**
 * A tube full of fluid.
 */
typedef struct lw_filled_tube lw_filled_tube;

/**
 * What is known of a fluid.
 */
typedef struct lw_fluid lw_fluid;

/**
 * A tube held at a radius, and what it would do when let go. An estimate, see lw_mechanics.
 */
typedef struct lw_held_bend lw_held_bend;

/**
 * A rigid volume of fluid whose pressure is held.
 */
typedef struct lw_hold lw_hold;

/**
 * What a measured thread may be.
 */
typedef struct lw_identification lw_identification;

/**
 * Limits of one side of a thread. Those of a taper thread are at the end that enters first.
 */
typedef struct lw_limits lw_limits;

/**
 * A line to be made.
 */
typedef struct lw_line lw_line;

/**
 * Pairs of different threads that turn in by hand and may hold on less than half of the thread.
 */
typedef struct lw_lookalikes lw_lookalikes;

/**
 * A male thread in a female one, from the limits of both. Overlaps and shares of a taper thread are the mean along the
 * engaged length once it binds, as it does when it is hand-tight.
 */
typedef struct lw_mating lw_mating;

/**
 * What was measured of a thread.
 */
typedef struct lw_measured lw_measured;

/**
 * A tube of known material data, to be bent: an estimate of its springback for the time before there are trial bends. It
 * leaves out that the section flattens, that the modulus falls with strain, creep, and friction in the tool, and has not been
 * compared with bends: no validation by experiment is claimed.
 */
typedef struct lw_mechanics lw_mechanics;

/**
 * A nut.
 */
typedef struct lw_nut lw_nut;

/**
 * A path: straights and bends in turn, from end A to end B.
 */
typedef struct lw_path lw_path;

/**
 * What they say, with its uncertainty. Pieces bent to the same angles, within 2 degrees, can all be rounded to the same side,
 * and so can lengths of pieces that were cut alike: intervals reach further by what that can make of them.
 */
typedef struct lw_piece_fit lw_piece_fit;

/**
 * Test pieces of one tube on one former.
 */
typedef struct lw_pieces lw_pieces;

/**
 * How a line is made on a bench.
 */
typedef struct lw_plan lw_plan;

/**
 * What a person decides about a plan.
 */
typedef struct lw_plan_options lw_plan_options;

/**
 * A list of findings, the worst first.
 */
typedef struct lw_problems lw_problems;

/**
 * What is known of a metal.
 */
typedef struct lw_properties lw_properties;

/**
 * A flattened section of a tube.
 */
typedef struct lw_section lw_section;

/**
 * Ways to tell two threads apart, in the order to be tried.
 */
typedef struct lw_separation lw_separation;

/**
 * The answer for many lines, row by row.
 */
typedef struct lw_sized lw_sized;

/**
 * A tube between clips, full or empty.
 */
typedef struct lw_span lw_span;

/**
 * The springback of one tube on one former.
 */
typedef struct lw_springback lw_springback;

/**
 * Shear areas of a pair over an engaged length.
 */
typedef struct lw_stripping lw_stripping;

/**
 * A cut length with its terms and assumptions.
 */
typedef struct lw_tape_cut lw_tape_cut;

/**
 * A thread: family, diameter and pitch, hand, and the class of its tolerances where one was given.
 */
typedef struct lw_thread lw_thread;

/**
 * The line through trial bends with its uncertainty.
 */
typedef struct lw_trial_fit lw_trial_fit;

/**
 * A tube.
 */
typedef struct lw_tube lw_tube;

/**
 * Washers to buy, a row for each thread.
 */
typedef struct lw_washers lw_washers;

/**
 * LW_OK, or the number of the code that ended the call; see enum lw_code.
 */
typedef int32_t lw_status;

/**
 * A length.
 */
typedef struct {
    /**
     * Millimeters.
     */
    double mm;
} lw_length;

/**
 * An angle.
 */
typedef struct {
    /**
     * Degrees.
     */
    double deg;
} lw_angle;

/**
 * A pressure or a stress.
 */
typedef struct {
    /**
     * Megapascals.
     */
    double mpa;
} lw_pressure;

/**
 * A strength, what it is divided by, and who says so: all three the caller's. Set size to sizeof(lw_strength).
 */
typedef struct {
    /**
     * sizeof(lw_strength).
     */
    size_t size;
    /**
     * The strength, undivided.
     */
    lw_pressure value;
    /**
     * What it is divided by; 1 leaves it whole.
     */
    double factor;
    /**
     * Where both were read; not empty.
     */
    const char *source;
} lw_strength;

/**
 * What is believed about springback before any trial. Set size to sizeof(lw_prior). Spreads and scatter are one standard
 * deviation each: at least 0.001 degrees, and 0.000 01 of the proportional part.
 *
 * Both spreads are what they say, whatever the trials scatter: trials that repeat well make the angles surer that they were
 * made at, and what was only believed stays as doubtful as it was believed to be.
 */
typedef struct {
    /**
     * sizeof(lw_prior).
     */
    size_t size;
    /**
     * Expected constant part.
     */
    lw_angle constant;
    /**
     * How far off it may be.
     */
    lw_angle constant_spread;
    /**
     * Expected proportional part, a plain ratio.
     */
    double proportional;
    /**
     * How far off it may be.
     */
    double proportional_spread;
    /**
     * How the two are off together, from -0.999 to 0.999; 0 where one says nothing of the other.
     */
    double correlation;
    /**
     * Scatter of one bend.
     */
    lw_angle scatter;
    /**
     * Number of bends that the scatter is believed like: 1 to 10 000.
     */
    size_t worth;
} lw_prior;

/**
 * A flare tool. Set size to sizeof(lw_flare_tool), and state both net_shortening and cut_spare: a struct filled with
 * zeros says that the tool was measured and shortens nothing.
 */
typedef struct {
    /**
     * sizeof(lw_flare_tool).
     */
    size_t size;
    /**
     * The form it makes: "double-45", "bubble" or "single-37".
     */
    const char *flare;
    /**
     * The tube it grips.
     */
    lw_length clamp;
    /**
     * The tube that stands out of the clamp before the first stroke.
     */
    lw_length projection;
    /**
     * How much shorter the tube gets, tip to tip; lw_unknown_length() where no test piece was measured.
     */
    lw_length net_shortening;
    /**
     * What is added on top for safety; lw_unknown_length() where none was stated.
     */
    lw_length cut_spare;
} lw_flare_tool;

/**
 * How the numbers of one file are written. Set size to sizeof(lw_notation).
 */
typedef struct {
    /**
     * sizeof(lw_notation).
     */
    size_t size;
    /**
     * 1 where the file uses a decimal comma, so that "1.500 mm" is doubtful; what a text itself shows counts as well.
     */
    int32_t decimal_comma;
    /**
     * 1 where a bare fraction in a field for tube sizes is inches; it is then listed as an assumption.
     */
    int32_t bare_fraction_is_inch;
} lw_notation;

/**
 * An end of a line: LW_A or LW_B.
 */
typedef int32_t lw_side;

/**
 * What an end straight must have room for: LW_FLARE_AFTER, LW_FLARE_BEFORE or LW_ASSEMBLED.
 */
typedef int32_t lw_minimum;

/**
 * What is known beside the length. Set size to sizeof(lw_tape).
 */
typedef struct {
    /**
     * sizeof(lw_tape).
     */
    size_t size;
    /**
     * The length measured.
     */
    lw_length measured;
    /**
     * The number of bends it was measured round.
     */
    size_t bends;
    /**
     * What string or tape was laid along: "center line", "string outside", "string inside", "corner legs" or "outer
     * legs".
     */
    const char *laid;
    /**
     * Outside diameter of the tube.
     */
    lw_length od;
    /**
     * All bend angles together; lw_unknown_angle() where each is taken for a right angle.
     */
    lw_angle total_angle;
    /**
     * Centerline radius as formed; lw_unknown_length() where the bench's or three diameters are taken.
     */
    lw_length radius;
    /**
     * The flare at A; NULL for a double flare.
     */
    const char *flare_a;
    /**
     * The flare at B; NULL for a double flare.
     */
    const char *flare_b;
    /**
     * The chance of being long enough, 0.5 to 0.9999; 0 for 0.95.
     */
    double chance;
} lw_tape;

/**
 * The end nearer the pressure source.
 */
#define LW_A 0

/**
 * The other end.
 */
#define LW_B 1

/**
 * Flaring after bending: the clamp, what stands out of it, the nut behind it, and room to work.
 */
#define LW_FLARE_AFTER 0

/**
 * Flaring before bending: the nut lies between flare and former, and the former must hold.
 */
#define LW_FLARE_BEFORE 1

/**
 * Assembly: the nut seats and can back off.
 */
#define LW_ASSEMBLED 2

#ifdef __cplusplus
extern "C" {
#endif // __cplusplus

/**
 * The version of the library, such as "1.2.3". The text is the library's own and is never freed. The header's
 * LW_VERSION_NUMBER says what a program was compiled against.
 */
const char *lw_version(void);

/**
 * What the last failed call of this thread said, in one line: level, code, what it is about, got, need, cure. Empty
 * if no call failed yet. A call that succeeds leaves it as it is, and so do the lw_last_error functions.
 */
lw_status lw_last_error_text(char *buf,
                             size_t cap,
                             size_t *need);

/**
 * The code of the last failed call of this thread; LW_OK if no call failed yet.
 */
lw_status lw_last_error_code(int32_t *code);

/**
 * The last failed call of this thread as a list of one problem; empty if no call failed yet. Free it with
 * lw_problems_free.
 */
lw_status lw_last_error_problem(lw_problems **problems);

/**
 * The name of a code without its prefix, the same in every language: "UNIT_MISSING".
 *
 * Errors: LW_UNKNOWN_NAME for a number that is no code.
 */
lw_status lw_code_name(int32_t code, char *buf, size_t cap, size_t *need);

/**
 * How grave a code is: "refuse" (there is no result), "stop" (the plan is a draft), "caution" or "note".
 *
 * Errors: LW_UNKNOWN_NAME for a number that is no code.
 */
lw_status lw_code_level(int32_t code, char *buf, size_t cap, size_t *need);

/**
 * What a code says, in one sentence.
 *
 * Errors: LW_UNKNOWN_NAME for a number that is no code.
 */
lw_status lw_code_meaning(int32_t code, char *buf, size_t cap, size_t *need);

/**
 * A length of so many millimeters.
 */
lw_length lw_mm(double value_mm);

/**
 * A length of so many inches, taken as value x 25.4 mm without loss: 3.0 / 16.0 gives 4.7625 mm.
 */
lw_length lw_in(double value_in);

/**
 * A length of so many meters.
 */
lw_length lw_m(double value_m);

/**
 * An angle of so many degrees.
 */
lw_angle lw_deg(double value_deg);

/**
 * An angle of so many radians.
 */
lw_angle lw_rad(double value_rad);

/**
 * A pressure or stress of so many megapascals.
 */
lw_pressure lw_mpa(double value_mpa);

/**
 * A length that is not known or was not measured (NaN inside). Only where a comment allows it is it understood;
 * everywhere else it is refused with LW_NOT_A_NUMBER.
 */
lw_length lw_unknown_length(void);

/**
 * Reads a length as people write it: "3/16 in", "9 1/4 in", "5'-3 1/4\"", "1.85 m", "2,84 m", "28 thou". A number
 * without a unit is refused. The range is checked where the length is used.
 *
 * Errors: LW_UNIT_MISSING, LW_WRONG_KIND for an angle, LW_NUMBER_AMBIGUOUS, LW_NOT_A_NUMBER, LW_DATE_IN_SIZE,
 * LW_UNREADABLE.
 */
lw_status lw_length_read(const char *text,
                         lw_length *length);

/**
 * Reads an angle as people write it: "90 deg", "1.5708 rad", "0.25 turn", "150 deg included" (a bend of 30 degrees),
 * but no clock position, which is for rotations. A number without a unit is refused.
 *
 * Errors: as lw_length_read, LW_WRONG_KIND for a length or a clock position, and LW_OUT_OF_RANGE for an included angle
 * that cannot be.
 */
lw_status lw_angle_read(const char *text,
                        lw_angle *angle);

/**
 * Reads a pressure or a stress as people write it: "205 GPa", "240 N/mm2", "130 bar", "1900 psi", "30 ksi". Case does not
 * count, but for "mPa", a thousandth of a pascal, which is refused. A number without a unit is refused.
 *
 * Errors: as lw_length_read, LW_WRONG_KIND for a length or an angle.
 */
lw_status lw_pressure_read(const char *text,
                           lw_pressure *pressure);

/**
 * A pressure that is not known (NaN inside). Only where a comment allows it is it understood; everywhere else it is
 * refused with LW_NOT_A_NUMBER.
 */
lw_pressure lw_unknown_pressure(void);

/**
 * An angle that is not known (NaN inside). Only where a comment allows it is it understood; everywhere else it is
 * refused with LW_NOT_A_NUMBER.
 */
lw_angle lw_unknown_angle(void);

/**
 * Reads the rotation of a bend plane: an angle with its sign, or "3 o'clock" for a quarter turn clockwise.
 *
 * Errors: as lw_angle_read; LW_WRONG_KIND for an included angle, LW_OUT_OF_RANGE for an hour that cannot be.
 */
lw_status lw_rotation_read(const char *text, lw_angle *rotation);

/**
 * Reads a length with its uncertainty: "9.45 mm +- 0.05 mm". Both numbers need their unit.
 *
 * Errors: as lw_length_read; LW_OUT_OF_RANGE for a negative uncertainty.
 */
lw_status lw_tolerance_read(const char *text, lw_length *value, lw_length *plus_minus);

/**
 * A length with every digit: lw_length_read gives the same bits back.
 */
lw_status lw_length_text(lw_length length, char *buf, size_t cap, size_t *need);

/**
 * An angle with every digit of its degrees: lw_angle_read gives the same degrees back.
 */
lw_status lw_angle_text(lw_angle angle, char *buf, size_t cap, size_t *need);

/**
 * A pressure with every digit: lw_pressure_read gives the same bits back.
 */
lw_status lw_pressure_text(lw_pressure pressure, char *buf, size_t cap, size_t *need);

/**
 * Tube in a bend, along the center line: radius x angle. The radius is the one as formed, after springback; the angle
 * is how far the tube is bent, 0 for straight.
 *
 * Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
 */
lw_status lw_bend_arc(lw_length radius,
                      lw_angle angle,
                      lw_length *arc);

/**
 * From the corner to where the bend starts: radius x tan(angle / 2).
 *
 * Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE, LW_NO_CORNER at 180 degrees and above.
 */
lw_status lw_bend_tangent_length(lw_length radius, lw_angle angle, lw_length *tangent_length);

/**
 * How much shorter the way round the bend is than the way over its corner.
 *
 * Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE, LW_NO_CORNER at 180 degrees and above.
 */
lw_status lw_bend_gain(lw_length radius, lw_angle angle, lw_length *gain);

/**
 * A straight cylinder of a tube's nominal size. Free it with lw_cylinder_free.
 */
lw_status lw_cylinder_new(const lw_tube *tube, lw_cylinder **cylinder);

/**
 * Puts a cylinder at its worst size: the diameter larger by od_plus, the wall thinner by wall_minus. Wall that was lost to
 * corrosion or filing can be counted in.
 *
 * Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE, also where no wall is left.
 */
lw_status lw_cylinder_set_tolerances(lw_cylinder *cylinder,
                                     lw_length od_plus,
                                     lw_length wall_minus);

/**
 * Bends a cylinder to a centerline radius, with the neutral axis on the centerline.
 *
 * Errors: as lw_bent_wall_new.
 */
lw_status lw_cylinder_set_bend(lw_cylinder *cylinder, lw_length radius);

/**
 * Moves the neutral axis of the bend inward, which thins the outside further.
 *
 * Errors: as lw_bent_wall_set_neutral_shift, LW_FIELD_MISSING for a straight cylinder.
 */
lw_status lw_cylinder_set_neutral_shift(lw_cylinder *cylinder, lw_length shift);

/**
 * The pressure at which the worst place of the ideal cylinder meets the caller's strength divided by the caller's factor,
 * by a theory ("Barlow", "Boardman", "Lame", "Tresca" or "von Mises"), and the wall at that place. It is no pressure that
 * a line may be used at: lw_ideal_cylinder_excludes says what it leaves out. "Boardman" is for walls up to a sixth of the
 * diameter; with a thicker one it would say more than "Lame".
 *
 * Errors: LW_STRUCT_SIZE, LW_UNKNOWN_NAME, LW_FIELD_MISSING for an empty source, LW_NOT_A_NUMBER, LW_OUT_OF_RANGE, also for
 * "Boardman" and a thicker wall.
 */
lw_status lw_ideal_cylinder_pressure(const lw_cylinder *cylinder,
                                     const char *theory,
                                     const lw_strength *strength,
                                     lw_pressure *pressure,
                                     lw_length *wall);

/**
 * The same in words: the pressure, the theory, the caller's strength, factor and source, and what it leaves out.
 *
 * Errors: as lw_ideal_cylinder_pressure.
 */
lw_status lw_ideal_cylinder_pressure_text(const lw_cylinder *cylinder,
                                          const char *theory,
                                          const lw_strength *strength,
                                          char *buf,
                                          size_t cap,
                                          size_t *need);

/**
 * Where around the bend that worst place is: "extrados", "intrados" or "side"; "straight" for a straight cylinder.
 *
 * Errors: as lw_ideal_cylinder_pressure.
 */
lw_status lw_ideal_cylinder_place(const lw_cylinder *cylinder,
                                  const char *theory,
                                  const lw_strength *strength,
                                  char *buf,
                                  size_t cap,
                                  size_t *need);

/**
 * What an ideal cylinder's pressure leaves out.
 */
lw_status lw_ideal_cylinder_excludes(char *buf, size_t cap, size_t *need);

/**
 * Stress at a pressure, at the worst place: the hoop stress for Barlow, Boardman and Lame, the strength that the whole
 * wall would need for Tresca and von Mises.
 *
 * Errors: LW_UNKNOWN_NAME, LW_NOT_A_NUMBER, LW_OUT_OF_RANGE, also for "Boardman" and a wall of more than a sixth of the
 * diameter.
 */
lw_status lw_cylinder_stress(const lw_cylinder *cylinder,
                             const char *theory,
                             lw_pressure pressure,
                             lw_pressure *stress);

/**
 * How often the stress at a pressure goes into the caller's strength, and whether that is as often as the caller's factor
 * asks (1 or 0). It speaks of the ideal cylinder, not of a line: see lw_ideal_cylinder_excludes.
 *
 * Errors: as lw_ideal_cylinder_pressure, LW_OUT_OF_RANGE also for no pressure at all.
 */
lw_status lw_ideal_cylinder_margin(const lw_cylinder *cylinder,
                                   const char *theory,
                                   lw_pressure pressure,
                                   const lw_strength *strength,
                                   double *found,
                                   int32_t *is_reached);

/**
 * Frees a cylinder. NULL is allowed.
 */
void lw_cylinder_free(lw_cylinder *cylinder);

/**
 * Stress in a bend as a multiple of the straight tube's, by the shape alone: the factor I of ASME B31.3 paragraph 304.2.1.
 *
 * Errors: LW_UNKNOWN_NAME, LW_NOT_A_NUMBER, LW_OUT_OF_RANGE, also for a radius of less than one diameter.
 */
lw_status lw_bend_shell_factor(lw_length od,
                               lw_length radius,
                               const char *place,
                               double *factor);

/**
 * The same by the shape and by what bending does to a thin wall under an assumption.
 *
 * Errors: as lw_bend_shell_factor.
 */
lw_status lw_bend_factor_after_bending(lw_length od,
                                       lw_length radius,
                                       const char *place,
                                       const char *thinning,
                                       double *factor);

/**
 * Wall at a place of a bend by the form of ASME B31.3 paragraph 304.2.1, with the caller's divided strength and the
 * caller's Y; without any allowance, and without what lw_ideal_cylinder_excludes lists. "side" is the straight. With Y = 0.4 it
 * is Boardman's formula. It is for walls up to a sixth of the diameter.
 *
 * Errors: as lw_ideal_cylinder_pressure, LW_OUT_OF_RANGE also for a pressure that wants a wall of more than a sixth of the
 * diameter.
 */
lw_status lw_bend_ideal_wall(lw_length od,
                             lw_length radius,
                             const char *place,
                             lw_pressure pressure,
                             const lw_strength *strength,
                             double y,
                             lw_length *wall);

/**
 * Peak hoop stress of a slightly oval tube under pressure as a multiple of the round one's; out_of_round is the largest
 * less the smallest diameter. An elastic peak: it matters for fatigue and hardly for bursting. Its limit is ours: a fifth of
 * the diameter less the wall, where an ellipse's true peak is 5 to 8 % higher.
 *
 * Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE, also beyond that fifth.
 */
lw_status lw_ovality_amplification(const lw_tube *tube,
                                   lw_length out_of_round,
                                   lw_pressure pressure,
                                   lw_pressure modulus,
                                   double poisson,
                                   double *factor);

/**
 * The number of smallest radii that public texts give for a tube diameter.
 *
 * Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
 */
lw_status lw_radius_rule_count(lw_length od, size_t *count);

/**
 * What a smallest radius is said of. Errors: as lw_radius_rule_count, LW_INDEX_OUT_OF_RANGE.
 */
lw_status lw_radius_rule_scope(lw_length od, size_t index, char *buf, size_t cap, size_t *need);

/**
 * The smallest centerline radius of a rule. Errors: as lw_radius_rule_scope.
 */
lw_status lw_radius_rule_least(lw_length od, size_t index, lw_length *least);

/**
 * Where it was read, and how that was checked. Errors: as lw_radius_rule_scope.
 */
lw_status lw_radius_rule_source(lw_length od, size_t index, char *buf, size_t cap, size_t *need);

/**
 * The number of limits of flattening, ovality and wrinkles that public texts give.
 */
lw_status lw_section_limit_count(size_t *count);

/**
 * What is limited: "flattening" (at least), "ovality" or "wrinkle" (at most). Errors: LW_INDEX_OUT_OF_RANGE.
 */
lw_status lw_section_limit_measure(size_t index, char *buf, size_t cap, size_t *need);

/**
 * What a limit is said of. Errors: LW_INDEX_OUT_OF_RANGE.
 */
lw_status lw_section_limit_scope(size_t index, char *buf, size_t cap, size_t *need);

/**
 * The limit, a plain share. Errors: LW_INDEX_OUT_OF_RANGE.
 */
lw_status lw_section_limit_value(size_t index, double *limit);

/**
 * Where it was read, and how that was checked. Errors: LW_INDEX_OUT_OF_RANGE.
 */
lw_status lw_section_limit_source(size_t index, char *buf, size_t cap, size_t *need);

/**
 * The number of rows of wall to have before bending.
 */
lw_status lw_wall_reserve_count(size_t *count);

/**
 * Wall to have before bending as a multiple of the wall that is needed, for a centerline radius in diameters; for pipe.
 *
 * Errors: LW_INDEX_OUT_OF_RANGE.
 */
lw_status lw_wall_reserve(size_t index,
                          double *radius_in_diameters,
                          double *multiple);

/**
 * Where it was read, and how that was checked. Errors: LW_INDEX_OUT_OF_RANGE.
 */
lw_status lw_wall_reserve_source(size_t index, char *buf, size_t cap, size_t *need);

/**
 * The number of tolerances of size that public texts give for a tube diameter; 0 where none was seen.
 *
 * Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
 */
lw_status lw_size_tolerance_count(lw_length od, size_t *count);

/**
 * What a tolerance is said of. Errors: as lw_size_tolerance_count, LW_INDEX_OUT_OF_RANGE.
 */
lw_status lw_size_tolerance_scope(lw_length od, size_t index, char *buf, size_t cap, size_t *need);

/**
 * The wall that a tolerance is said of, by how much it may be off either way, and the same of the outside diameter, which
 * is lw_unknown_length() where the text was not seen to say. Errors: as lw_size_tolerance_scope.
 */
lw_status lw_size_tolerance(lw_length od,
                            size_t index,
                            lw_length *wall,
                            lw_length *wall_plus_minus,
                            lw_length *od_plus_minus);

/**
 * Where it was read, and how that was checked. Errors: as lw_size_tolerance_scope.
 */
lw_status lw_size_tolerance_source(lw_length od, size_t index, char *buf, size_t cap, size_t *need);

/**
 * A section by its flattening: smallest diameter as a share of the tube's, 1 = round. It flattens with its "perimeter
 * kept", as in free bending, or with its "sides held", as in the groove of a former. Free it with lw_section_free.
 *
 * Errors: LW_UNKNOWN_NAME, LW_NOT_A_NUMBER, LW_OUT_OF_RANGE, also where no bore is left.
 */
lw_status lw_section_of_flattening(const lw_tube *tube,
                                   double flattening,
                                   const char *kinematics,
                                   lw_section **section);

/**
 * A section by its ovality: largest less smallest diameter, as a share of the tube's nominal one, 0 = round. Otherwise as
 * lw_section_of_flattening.
 */
lw_status lw_section_of_ovality(const lw_tube *tube,
                                double ovality,
                                const char *kinematics,
                                lw_section **section);

/**
 * Largest outside diameter.
 */
lw_status lw_section_largest(const lw_section *section, lw_length *largest);

/**
 * Smallest outside diameter.
 */
lw_status lw_section_smallest(const lw_section *section, lw_length *smallest);

/**
 * Largest less smallest diameter, as lw_ovality_amplification takes it.
 */
lw_status lw_section_out_of_round(const lw_section *section, lw_length *out_of_round);

/**
 * (Dmax - Dmin) / Dnom.
 */
lw_status lw_section_ovality(const lw_section *section, double *ovality);

/**
 * Dmin / D.
 */
lw_status lw_section_flattening(const lw_section *section, double *flattening);

/**
 * Bore left, in square millimeters.
 */
lw_status lw_section_bore_area_mm2(const lw_section *section, double *bore_area_mm2);

/**
 * Bore left as a share of the round tube's.
 */
lw_status lw_section_bore_share(const lw_section *section, double *bore_share);

/**
 * Bore lost as a share of the round tube's.
 */
lw_status lw_section_bore_loss(const lw_section *section, double *bore_loss);

/**
 * Frees a section. NULL is allowed.
 */
void lw_section_free(lw_section *section);

/**
 * A tube bent to a centerline radius, the neutral axis on the centerline. Free it with lw_bent_wall_free.
 *
 * Where it ends (limits of ours): the outside is stretched to at most twice its length and the inside pressed to half of it,
 * which is a radius of one diameter while nothing is shifted, and the thickened inside leaves a bore.
 *
 * Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE, also beyond those limits.
 */
lw_status lw_bent_wall_new(const lw_tube *tube,
                           lw_length radius,
                           lw_bent_wall **bent);

/**
 * Moves the neutral axis toward the inside of the bend; a negative shift moves it outward.
 *
 * Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE, also where it would leave the tube and beyond the limits of lw_bent_wall_new.
 */
lw_status lw_bent_wall_set_neutral_shift(lw_bent_wall *bent,
                                         lw_length shift);

/**
 * Moves the neutral axis to where a thin, perfectly plastic tube has it without any pull along it.
 */
lw_status lw_bent_wall_set_plastic_neutral_axis(lw_bent_wall *bent);

/**
 * By how much the neutral axis lies inside the centerline.
 */
lw_status lw_bent_wall_neutral_shift(const lw_bent_wall *bent, lw_length *shift);

/**
 * Wall at a place ("extrados", "intrados" or "side") under an assumption ("plane strain" or "uniaxial").
 *
 * Errors: LW_UNKNOWN_NAME.
 */
lw_status lw_bent_wall_at(const lw_bent_wall *bent, const char *place, const char *thinning, lw_length *wall);

/**
 * Smallest and largest wall at a place over both assumptions.
 *
 * Errors: LW_UNKNOWN_NAME.
 */
lw_status lw_bent_wall_range(const lw_bent_wall *bent, const char *place, lw_length *least, lw_length *most);

/**
 * Stretch of the outermost surface, 0.1 for a tenth; to be held against what the metal takes before it breaks.
 */
lw_status lw_bent_wall_outer_stretch(const lw_bent_wall *bent,
                                     double *stretch);

/**
 * The compression inside the bend, and the one at which a free, thin cylinder of this wall begins to wrinkle, for a metal of
 * a hardening exponent; both plain shares. The criterion holds for walls up to a tenth of their radius; for a thicker one
 * critical is what one of a tenth bears, and it bears that at least.
 *
 * Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE for the exponent.
 */
lw_status lw_bent_wall_free_wrinkling(const lw_bent_wall *bent,
                                      double hardening_exponent,
                                      double *compression,
                                      double *critical);

/**
 * Whether the inside of the bend would wrinkle or kink unless a groove that fits, or a mandrel, holds it. That it needs one
 * is no verdict on a bend that has one. Not compared with bends.
 *
 * Errors: as lw_bent_wall_free_wrinkling; LW_NOT_KNOWN where the criterion does not say, as for nearly all brake tube and for a
 * compression of less than 1 % beyond critical, which may be elastic.
 */
lw_status lw_bent_wall_needs_groove(const lw_bent_wall *bent,
                                    double hardening_exponent,
                                    int32_t *needs_groove);

/**
 * The same in a sentence, with the reason where it is not known.
 *
 * Errors: as lw_bent_wall_free_wrinkling.
 */
lw_status lw_bent_wall_wrinkling_words(const lw_bent_wall *bent,
                                       double hardening_exponent,
                                       char *buf,
                                       size_t cap,
                                       size_t *need);

/**
 * Frees a bent wall. NULL is allowed.
 */
void lw_bent_wall_free(lw_bent_wall *bent);

/**
 * A round tube by outside diameter, wall and the name of its material: "low-carbon steel", "copper-nickel",
 * "stainless 304" or "stainless 316". Free it with lw_tube_free.
 *
 * Errors: LW_UNKNOWN_NAME for the material, LW_NOT_A_NUMBER, LW_OUT_OF_RANGE (also when the wall leaves no bore).
 */
lw_status lw_tube_new(lw_length od,
                      lw_length wall,
                      const char *material,
                      lw_tube **tube);

/**
 * Records the smallest bend radius that the tube's maker gives, and where that was read.
 *
 * Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
 */
lw_status lw_tube_set_min_radius(lw_tube *tube, lw_length radius, const char *source);

/**
 * Outside diameter.
 */
lw_status lw_tube_od(const lw_tube *tube, lw_length *od);

/**
 * Wall thickness.
 */
lw_status lw_tube_wall(const lw_tube *tube, lw_length *wall);

/**
 * Inside diameter.
 */
lw_status lw_tube_bore(const lw_tube *tube, lw_length *bore);

/**
 * The name of the material, as lw_tube_new takes it.
 */
lw_status lw_tube_material(const lw_tube *tube, char *buf, size_t cap, size_t *need);

/**
 * The smallest bend radius that the tube's maker gives, to the centerline. Errors: LW_NOT_KNOWN where none was recorded.
 */
lw_status lw_tube_min_radius(const lw_tube *tube,
                             lw_length *min_radius);

/**
 * Where that radius was read. Errors: LW_NOT_KNOWN where none was recorded.
 */
lw_status lw_tube_min_radius_source(const lw_tube *tube, char *buf, size_t cap, size_t *need);

/**
 * Volume of fluid in a length of this tube, in milliliters.
 *
 * Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
 */
lw_status lw_tube_bore_volume_ml(const lw_tube *tube, lw_length length, double *volume_ml);

/**
 * Mass of a length of this tube, empty and without coating, in grams.
 *
 * Errors: LW_NOT_KNOWN where the density of the material is not known, LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
 */
lw_status lw_tube_mass_g(const lw_tube *tube, lw_length length, double *mass_g);

/**
 * Frees a tube. NULL is allowed.
 */
void lw_tube_free(lw_tube *tube);

/**
 * The number of tube materials that the library knows.
 */
lw_status lw_material_count(size_t *count);

/**
 * The name of a tube material: "low-carbon steel", "copper-nickel" and so on.
 *
 * Errors: LW_INDEX_OUT_OF_RANGE.
 */
lw_status lw_material_name(size_t index, char *buf, size_t cap, size_t *need);

/**
 * The number of conditions of a material that strengths are known for.
 *
 * Errors: LW_UNKNOWN_NAME.
 */
lw_status lw_material_condition_count(const char *material, size_t *count);

/**
 * A condition of a material that strengths are known for: "annealed", "half hard" and so on.
 *
 * Errors: LW_UNKNOWN_NAME, LW_INDEX_OUT_OF_RANGE.
 */
lw_status lw_material_condition(const char *material, size_t index, char *buf, size_t cap, size_t *need);

/**
 * What is known of a tube material; strengths only where `condition` is not NULL, and they are what a standard asks for
 * at least, not what a tube has. Free it with lw_properties_free.
 *
 * Errors: LW_UNKNOWN_NAME for the material, and for a condition that no figures are known for.
 */
lw_status lw_material_properties(const char *material,
                                 const char *condition,
                                 lw_properties **properties);

/**
 * A metal of which nothing is known yet but what it is called. Free it with lw_properties_free.
 */
lw_status lw_properties_new(const char *name, lw_properties **properties);

/**
 * Sets the mass per volume, with where it was read.
 *
 * Errors: LW_FIELD_MISSING for an empty source, LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
 */
lw_status lw_properties_set_density(lw_properties *properties, double density_kg_per_m3, const char *source);

/**
 * Sets the elastic modulus, with where it was read. Errors: as lw_properties_set_density; LW_OUT_OF_RANGE also where a
 * tangent modulus that is known is not below it.
 */
lw_status lw_properties_set_modulus(lw_properties *properties,
                                    lw_pressure modulus,
                                    const char *source);

/**
 * Sets Poisson's ratio, with where it was read. Errors: as lw_properties_set_density.
 */
lw_status lw_properties_set_poisson(lw_properties *properties, double poisson, const char *source);

/**
 * Sets the yield strength, with where it was read. Errors: as lw_properties_set_density.
 */
lw_status lw_properties_set_yield_strength(lw_properties *properties,
                                           lw_pressure yield_strength,
                                           const char *source);

/**
 * Sets the tensile strength, with where it was read. Errors: as lw_properties_set_density.
 */
lw_status lw_properties_set_tensile_strength(lw_properties *properties,
                                             lw_pressure tensile_strength,
                                             const char *source);

/**
 * Sets the elongation at break as a share, with where it was read. Errors: as lw_properties_set_density.
 */
lw_status lw_properties_set_elongation(lw_properties *properties, double elongation, const char *source);

/**
 * Sets the slope of stress over strain beyond the yield strength, where hardening is taken as a straight line, with where
 * it was read. It is of use only beside a yield strength. Errors: as lw_properties_set_density; LW_OUT_OF_RANGE also where
 * it is not below an elastic modulus that is known.
 */
lw_status lw_properties_set_tangent_modulus(lw_properties *properties,
                                            lw_pressure tangent_modulus,
                                            const char *source);

/**
 * Sets the law of hardening, true stress = strength_coefficient x true strain ^ hardening_exponent, with where it was
 * read. Errors: as lw_properties_set_density.
 */
lw_status lw_properties_set_hardening(lw_properties *properties,
                                      lw_pressure strength_coefficient,
                                      double hardening_exponent,
                                      const char *source);

/**
 * Sets the growth in length per kelvin as a share, with where it was read. Errors: as lw_properties_set_density.
 */
lw_status lw_properties_set_expansion(lw_properties *properties,
                                      double expansion_per_k,
                                      const char *source);

/**
 * The metal's name.
 */
lw_status lw_properties_name(const lw_properties *properties, char *buf, size_t cap, size_t *need);

/**
 * Mass per volume. Errors: LW_NOT_KNOWN.
 */
lw_status lw_properties_density(const lw_properties *properties, double *density_kg_per_m3);

/**
 * Elastic modulus. Errors: LW_NOT_KNOWN.
 */
lw_status lw_properties_modulus(const lw_properties *properties, lw_pressure *modulus);

/**
 * Poisson's ratio. Errors: LW_NOT_KNOWN.
 */
lw_status lw_properties_poisson(const lw_properties *properties, double *poisson);

/**
 * Yield strength: of a standard the least that it asks for. Errors: LW_NOT_KNOWN.
 */
lw_status lw_properties_yield_strength(const lw_properties *properties, lw_pressure *yield_strength);

/**
 * Tensile strength: of a standard the least that it asks for. Errors: LW_NOT_KNOWN.
 */
lw_status lw_properties_tensile_strength(const lw_properties *properties, lw_pressure *tensile_strength);

/**
 * Elongation at break as a share. Errors: LW_NOT_KNOWN.
 */
lw_status lw_properties_elongation(const lw_properties *properties, double *elongation);

/**
 * Slope of stress over strain beyond the yield strength. Errors: LW_NOT_KNOWN.
 */
lw_status lw_properties_tangent_modulus(const lw_properties *properties, lw_pressure *tangent_modulus);

/**
 * Law of hardening; see lw_properties_set_hardening. Errors: LW_NOT_KNOWN.
 */
lw_status lw_properties_hardening(const lw_properties *properties,
                                  lw_pressure *strength_coefficient,
                                  double *hardening_exponent);

/**
 * Growth in length per kelvin as a share. Errors: LW_NOT_KNOWN.
 */
lw_status lw_properties_expansion(const lw_properties *properties, double *expansion_per_k);

/**
 * Where a figure was read, and how that was checked. `figure` is the name of its getter after lw_properties_, such as
 * "yield_strength".
 *
 * Errors: LW_NOT_KNOWN where the figure is not, LW_UNKNOWN_NAME.
 */
lw_status lw_properties_source(const lw_properties *properties,
                               const char *figure,
                               char *buf,
                               size_t cap,
                               size_t *need);

/**
 * Frees what is known of a metal. NULL is allowed.
 */
void lw_properties_free(lw_properties *properties);

/**
 * Reads a thread as people write it ("M 10 x 1,0", "7/16 - 24 UNS") and gives its designation in its one spelling
 * ("M10x1", "7/16-24").
 *
 * Errors: LW_THREAD_AMBIGUOUS for a metric diameter without pitch, LW_HEX_NOT_THREAD for a spanner size,
 * LW_THREAD_CONTRADICTION, LW_UNREADABLE.
 */
lw_status lw_thread_read(const char *text,
                         char *buf,
                         size_t cap,
                         size_t *need);

/**
 * A thread by its designation as people write it: "M10x1-6g", "3/8-24 UNF-2A", "G1/8 A", "Rc 1/8", "1/8-27 NPT". Free
 * it with lw_thread_free.
 *
 * Errors: as lw_thread_read.
 */
lw_status lw_thread_new(const char *designation,
                        lw_thread **thread);

/**
 * The designation of a thread in its one spelling.
 */
lw_status lw_thread_designation(const lw_thread *thread, char *buf, size_t cap, size_t *need);

/**
 * The family of a thread: "metric", "unified", "G", "R", "Rp", "Rc" or "NPT".
 */
lw_status lw_thread_family(const lw_thread *thread, char *buf, size_t cap, size_t *need);

/**
 * The side of a thread, "external" or "internal", where its class or its family says it.
 *
 * Errors: LW_NOT_KNOWN.
 */
lw_status lw_thread_side(const lw_thread *thread, char *buf, size_t cap, size_t *need);

/**
 * The class of a thread, such as "6g" or "2B", where one was given.
 *
 * Errors: LW_NOT_KNOWN.
 */
lw_status lw_thread_class(const lw_thread *thread, char *buf, size_t cap, size_t *need);

/**
 * The series of a Unified thread, "UNC", "UNF", "UNEF", "UN" or "UNS", which follows from diameter and count.
 *
 * Errors: LW_NOT_KNOWN for other families, which have none.
 */
lw_status lw_thread_series(const lw_thread *thread, char *buf, size_t cap, size_t *need);

/**
 * The group of engagement lengths that a metric designation names: "S", "N" or "L".
 *
 * Errors: LW_NOT_KNOWN where it names none.
 */
lw_status lw_thread_engagement(const lw_thread *thread, char *buf, size_t cap, size_t *need);

/**
 * The same thread without class and group of engagement lengths, as a thread of its own. Free it with lw_thread_free.
 */
lw_status lw_thread_plain(const lw_thread *thread,
                          lw_thread **plain);

/**
 * Nominal diameter; of a pipe thread its basic major diameter at the gauge plane, of NPT the pipe's.
 */
lw_status lw_thread_diameter(const lw_thread *thread, lw_length *diameter);

/**
 * Pitch.
 */
lw_status lw_thread_pitch(const lw_thread *thread, lw_length *pitch);

/**
 * Threads per inch.
 */
lw_status lw_thread_per_inch(const lw_thread *thread, double *per_inch);

/**
 * Half the angle between the flanks.
 */
lw_status lw_thread_half_angle(const lw_thread *thread, lw_angle *half_angle);

/**
 * Change of diameter along the axis, a plain ratio: 1/16 for a taper thread, 0 for a parallel one.
 */
lw_status lw_thread_taper(const lw_thread *thread, double *taper);

/**
 * Whether a thread is left-handed: 1, or 0.
 */
lw_status lw_thread_is_left_hand(const lw_thread *thread, int32_t *is_left_hand);

/**
 * Basic height of the thread.
 */
lw_status lw_thread_height(const lw_thread *thread, lw_length *height);

/**
 * Basic pitch diameter, not rounded; of NPT the one at the tip.
 */
lw_status lw_thread_basic_pitch_diameter(const lw_thread *thread, lw_length *diameter);

/**
 * Lead angle at the basic pitch diameter.
 */
lw_status lw_thread_lead_angle(const lw_thread *thread, lw_angle *lead_angle);

/**
 * Tensile stress area of the external thread in mm2.
 *
 * Errors: LW_NOT_KNOWN for pipe threads, whose standards define none.
 */
lw_status lw_thread_stress_area_mm2(const lw_thread *thread, double *area_mm2);

/**
 * The hole for tapping with a share of the full thread, a plain ratio from 0.3 to 1; full is what drill charts count, 3/4
 * of the sharp triangle at 60 degrees: d - share x 1.299 P. At 55 degrees it is the thread's own height.
 *
 * Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE, LW_NOT_KNOWN for a taper thread.
 */
lw_status lw_thread_tap_drill(const lw_thread *thread,
                              double share,
                              lw_length *hole);

/**
 * The share of the full thread that a hole leaves, a plain ratio in the sense of lw_thread_tap_drill: 5/6 for a hole of the
 * basic minor diameter at 60 degrees.
 *
 * Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE, LW_NOT_KNOWN for a taper thread.
 */
lw_status lw_thread_share(const lw_thread *thread,
                          lw_length hole,
                          double *share);

/**
 * The shortest and longest normal engagement of a metric thread (ISO 965-1).
 *
 * Errors: LW_NOT_KNOWN where the table has no row for it.
 */
lw_status lw_thread_normal_engagement(const lw_thread *thread, lw_length *shortest, lw_length *longest);

/**
 * The group that an engaged length of a metric thread belongs to: "S" up to the shortest normal one, "N", or "L" beyond
 * the longest.
 *
 * Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE, LW_NOT_KNOWN where the table has no row for the thread.
 */
lw_status lw_thread_engagement_group(const lw_thread *thread,
                                     lw_length engaged,
                                     char *buf,
                                     size_t cap,
                                     size_t *need);

/**
 * The length of engagement that the tolerances of a Unified thread are based on where none is stated; lw_limits_new_over
 * takes another one.
 *
 * Errors: LW_NOT_KNOWN for other families.
 */
lw_status lw_thread_basic_engagement(const lw_thread *thread,
                                     lw_length *engagement);

/**
 * How far a taper thread goes in by hand: the gauge length of R and Rc (ISO 7-1, from memory), L1 of NPT.
 *
 * Errors: LW_NOT_KNOWN for a thread without taper.
 */
lw_status lw_thread_gauge_length(const lw_thread *thread, lw_length *gauge_length);

/**
 * Thread with full flanks that an external taper thread has at least: of R (ISO 7-1, from memory), L2 of NPT.
 *
 * Errors: LW_NOT_KNOWN for other families.
 */
lw_status lw_thread_useful_length(const lw_thread *thread, lw_length *useful_length);

/**
 * Whether two designations name the same thread, whatever their classes: 1, or 0.
 */
lw_status lw_thread_is_same_size(const lw_thread *thread, const lw_thread *other, int32_t *is_same);

/**
 * Frees a thread. NULL is allowed.
 */
void lw_thread_free(lw_thread *thread);

/**
 * The number of threads in the catalogue.
 */
lw_status lw_catalogue_count(size_t *count);

/**
 * The designation of a thread in the catalogue.
 *
 * Errors: LW_INDEX_OUT_OF_RANGE.
 */
lw_status lw_catalogue_thread(size_t index, char *buf, size_t cap, size_t *need);

/**
 * Where a thread of the catalogue is met.
 *
 * Errors: LW_INDEX_OUT_OF_RANGE.
 */
lw_status lw_catalogue_met(size_t index, char *buf, size_t cap, size_t *need);

/**
 * Where a thread of the catalogue comes from, and how that was checked.
 *
 * Errors: LW_INDEX_OUT_OF_RANGE.
 */
lw_status lw_catalogue_source(size_t index, char *buf, size_t cap, size_t *need);

/**
 * The number of rows that say how the limits of the catalogue were checked: one for each family and each way of checking.
 */
lw_status lw_catalogue_report_count(size_t *count);

/**
 * The family that a row of the report is about.
 *
 * Errors: LW_INDEX_OUT_OF_RANGE.
 */
lw_status lw_catalogue_report_family(size_t index, char *buf, size_t cap, size_t *need);

/**
 * How the limits of a row were checked, in the words of lw_limits_checked.
 *
 * Errors: LW_INDEX_OUT_OF_RANGE.
 */
lw_status lw_catalogue_report_checked(size_t index, char *buf, size_t cap, size_t *need);

/**
 * How many limits were checked like that; the outside and the inside of a thread count one each.
 *
 * Errors: LW_INDEX_OUT_OF_RANGE.
 */
lw_status lw_catalogue_report_limits(size_t index, size_t *limits);

/**
 * Every male of the catalogue in every female: the look-alikes, the most convincing first. Free them with
 * lw_lookalikes_free.
 */
lw_status lw_lookalikes_new(lw_lookalikes **lookalikes);

/**
 * As lw_lookalikes_new, of n threads; of the whole catalogue where n is 0.
 */
lw_status lw_lookalikes_new_among(const lw_thread *const *threads, size_t n, lw_lookalikes **lookalikes);

/**
 * The number of look-alike pairs.
 */
lw_status lw_lookalikes_count(const lw_lookalikes *lookalikes, size_t *count);

/**
 * One look-alike pair. Free it with lw_mating_free.
 *
 * Errors: LW_INDEX_OUT_OF_RANGE.
 */
lw_status lw_lookalikes_mating(const lw_lookalikes *lookalikes, size_t index, lw_mating **mating);

/**
 * Frees look-alike pairs. NULL is allowed.
 */
void lw_lookalikes_free(lw_lookalikes *lookalikes);

/**
 * Nothing measured yet, of an "external" or "internal" thread. Free it with lw_measured_free.
 *
 * Errors: LW_UNKNOWN_NAME.
 */
lw_status lw_measured_new(const char *side, lw_measured **measured);

/**
 * Records the diameter over the crests, major outside and minor inside, and how far the reading may be off either way.
 *
 * Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
 */
lw_status lw_measured_set_diameter(lw_measured *measured,
                                   lw_length diameter,
                                   lw_length plus_minus);

/**
 * Records a length over a count of pitches, such as ten, and how far the reading may be off either way.
 *
 * Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
 */
lw_status lw_measured_set_pitches(lw_measured *measured,
                                  size_t count,
                                  lw_length length,
                                  lw_length plus_minus);

/**
 * Records threads counted per inch, and how far the count may be off either way; 0 for half a thread over 8 mm, which is
 * 1.6.
 *
 * Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
 */
lw_status lw_measured_set_per_inch(lw_measured *measured,
                                   double per_inch,
                                   double plus_minus);

/**
 * Records the most that wear can have taken; 0.1 mm where nobody says.
 *
 * Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
 */
lw_status lw_measured_set_wear(lw_measured *measured, lw_length most);

/**
 * Frees what was measured. NULL is allowed.
 */
void lw_measured_free(lw_measured *measured);

/**
 * Compares what was measured with n threads, or with the whole catalogue where n is 0. Free it with
 * lw_identification_free.
 *
 * Errors: LW_FIELD_MISSING where nothing was measured.
 */
lw_status lw_identify(const lw_measured *measured,
                      const lw_thread *const *threads,
                      size_t n,
                      lw_identification **identification);

/**
 * The number of threads that the readings allow.
 */
lw_status lw_identification_count(const lw_identification *identification, size_t *count);

/**
 * The designation of a candidate; the likeliest is the first.
 *
 * Errors: LW_INDEX_OUT_OF_RANGE.
 */
lw_status lw_identification_thread(const lw_identification *identification,
                                   size_t index,
                                   char *buf,
                                   size_t cap,
                                   size_t *need);

/**
 * A candidate's share of the likelihood, a plain ratio: the chance that it is the one, if the thread is in the list.
 *
 * Errors: LW_INDEX_OUT_OF_RANGE.
 */
lw_status lw_identification_share(const lw_identification *identification,
                                  size_t index,
                                  double *share);

/**
 * What ten pitches of a candidate measure.
 *
 * Errors: LW_INDEX_OUT_OF_RANGE.
 */
lw_status lw_identification_ten_pitches(const lw_identification *identification,
                                        size_t index,
                                        lw_length *ten_pitches);

/**
 * The diameters that a part of a candidate can have, wear included.
 *
 * Errors: LW_INDEX_OUT_OF_RANGE.
 */
lw_status lw_identification_diameter(const lw_identification *identification,
                                     size_t index,
                                     lw_length *least,
                                     lw_length *most);

/**
 * The thread of the list that comes nearest, where none is allowed.
 *
 * Errors: LW_NOT_KNOWN where there are candidates, or no list.
 */
lw_status lw_identification_nearest(const lw_identification *identification,
                                    char *buf,
                                    size_t cap,
                                    size_t *need);

/**
 * The one further measurement that tells the leading two apart: "hand", "ten pitches", "diameter", "taper over 5 mm" or "flank angle".
 *
 * Errors: LW_NOT_KNOWN where there are no two, or none does.
 */
lw_status lw_identification_next(const lw_identification *identification,
                                 char *buf,
                                 size_t cap,
                                 size_t *need);

/**
 * What to do next, in words.
 */
lw_status lw_identification_advice(const lw_identification *identification,
                                   char *buf,
                                   size_t cap,
                                   size_t *need);

/**
 * How two threads are told apart, in words; the first measurement that does it. side is "external" or "internal".
 *
 * Errors: LW_UNKNOWN_NAME, LW_THREAD_SIDE, LW_OUT_OF_RANGE, LW_NOT_KNOWN where none does.
 */
lw_status lw_thread_separate(const lw_thread *thread,
                             const lw_thread *other,
                             const char *side,
                             char *buf,
                             size_t cap,
                             size_t *need);

/**
 * Frees an identification. NULL is allowed.
 */
void lw_identification_free(lw_identification *identification);

/**
 * The limits of one side of a thread, "external" or "internal", by its class or, where it has none, the usual one. Free
 * them with lw_limits_free.
 *
 * Errors: LW_UNKNOWN_NAME, LW_THREAD_SIDE where class or family belong to the other side, LW_OUT_OF_RANGE for a metric
 * diameter outside ISO 965-1.
 */
lw_status lw_limits_new(const lw_thread *thread,
                        const char *side,
                        lw_limits **limits);

/**
 * As lw_limits_new, for a Unified thread over another length of engagement than the usual one.
 *
 * Errors: as lw_limits_new; LW_NOT_A_NUMBER, LW_NOT_KNOWN for another family.
 */
lw_status lw_limits_new_over(const lw_thread *thread,
                             const char *side,
                             lw_length engaged,
                             lw_limits **limits);

/**
 * The smallest major diameter.
 *
 * Errors: LW_NOT_KNOWN where the standard sets no such limit.
 */
lw_status lw_limits_major_min(const lw_limits *limits, lw_length *diameter);

/**
 * As lw_limits_major_min, the largest.
 *
 * Errors: LW_NOT_KNOWN where the standard sets no such limit.
 */
lw_status lw_limits_major_max(const lw_limits *limits, lw_length *diameter);

/**
 * The smallest pitch diameter.
 *
 * Errors: LW_NOT_KNOWN where the standard sets no such limit.
 */
lw_status lw_limits_pitch_diameter_min(const lw_limits *limits, lw_length *diameter);

/**
 * As lw_limits_pitch_diameter_min, the largest.
 *
 * Errors: LW_NOT_KNOWN where the standard sets no such limit.
 */
lw_status lw_limits_pitch_diameter_max(const lw_limits *limits, lw_length *diameter);

/**
 * The smallest minor diameter; outside it is the root.
 *
 * Errors: LW_NOT_KNOWN where the standard sets no such limit.
 */
lw_status lw_limits_minor_min(const lw_limits *limits, lw_length *diameter);

/**
 * As lw_limits_minor_min, the largest.
 *
 * Errors: LW_NOT_KNOWN where the standard sets no such limit.
 */
lw_status lw_limits_minor_max(const lw_limits *limits, lw_length *diameter);

/**
 * How far the largest external thread stays below the basic diameter.
 *
 * Errors: LW_NOT_KNOWN for an internal thread.
 */
lw_status lw_limits_allowance(const lw_limits *limits, lw_length *diameter);

/**
 * Largest minor diameter of the rounded root of an external Unified thread, for reference.
 *
 * Errors: LW_NOT_KNOWN for others.
 */
lw_status lw_limits_rounded_root(const lw_limits *limits, lw_length *diameter);

/**
 * The side: "external" or "internal".
 */
lw_status lw_limits_side(const lw_limits *limits, char *buf, size_t cap, size_t *need);

/**
 * Whether nobody named the class, so that the usual one was taken: 1, or 0.
 */
lw_status lw_limits_is_class_assumed(const lw_limits *limits, int32_t *is_assumed);

/**
 * The class that the limits belong to, named or taken.
 *
 * Errors: LW_NOT_KNOWN where the family has no classes on that side.
 */
lw_status lw_limits_class(const lw_limits *limits, char *buf, size_t cap, size_t *need);

/**
 * How the numbers were checked, such as "seen" or "computed".
 */
lw_status lw_limits_checked(const lw_limits *limits, char *buf, size_t cap, size_t *need);

/**
 * Where the numbers come from, and how that was checked.
 */
lw_status lw_limits_source(const lw_limits *limits, char *buf, size_t cap, size_t *need);

/**
 * Frees limits. NULL is allowed.
 */
void lw_limits_free(lw_limits *limits);

/**
 * A male in a female thread, from the limits of their classes, the usual ones where none is given. Different threads are
 * a stop, whatever they overlap. Free it with lw_mating_free.
 *
 * Errors: LW_THREAD_SIDE, LW_OUT_OF_RANGE.
 */
lw_status lw_mating_new(const lw_thread *male,
                        const lw_thread *female,
                        lw_mating **mating);

/**
 * One part in another, both with diameters as measured at the end that enters first: whether it starts, 1 or 0, the radial
 * overlap there, negative where the crests pass each other, and the engaged length until the play is used up,
 * lw_unknown_length() where nothing binds. Pitch, flanks and taper are those of the threads.
 *
 * Errors: LW_THREAD_SIDE, LW_NOT_A_NUMBER, LW_OUT_OF_RANGE also for diameters that do not follow each other or are not those
 * of the thread.
 */
lw_status lw_mate_measured(const lw_thread *male,
                           lw_length male_major,
                           lw_length male_pitch_diameter,
                           lw_length male_minor,
                           const lw_thread *female,
                           lw_length female_major,
                           lw_length female_pitch_diameter,
                           lw_length female_minor,
                           int32_t *starts,
                           lw_length *overlap,
                           lw_length *engaged);

/**
 * The designation of the male.
 */
lw_status lw_mating_male(const lw_mating *mating, char *buf, size_t cap, size_t *need);

/**
 * The designation of the female.
 */
lw_status lw_mating_female(const lw_mating *mating, char *buf, size_t cap, size_t *need);

/**
 * Whether the male starts, over all sizes that the classes allow: "always", "sometimes" or "never".
 */
lw_status lw_mating_starts(const lw_mating *mating, char *buf, size_t cap, size_t *need);

/**
 * What fingers notice: "does not start", "binds", "turns in", "rattles" or "slides in". Where sizes disagree, the more
 * treacherous answer.
 */
lw_status lw_mating_feel(const lw_mating *mating,
                         char *buf,
                         size_t cap,
                         size_t *need);

/**
 * How grave the pair is: "stop" for different threads, "note" for the same.
 */
lw_status lw_mating_level(const lw_mating *mating, char *buf, size_t cap, size_t *need);

/**
 * The finding in plain words, the worst first.
 */
lw_status lw_mating_verdict(const lw_mating *mating, char *buf, size_t cap, size_t *need);

/**
 * Whether both are the same thread, or an R in an Rp or Rc of its size: 1, or 0.
 */
lw_status lw_mating_is_same(const lw_mating *mating, int32_t *is_same);

/**
 * Whether it is another thread that turns in by hand and may hold on less than half of its thread: 1, or 0.
 */
lw_status lw_mating_is_lookalike(const lw_mating *mating, int32_t *is_lookalike);

/**
 * Radial overlap at worst and, of the sizes that start, at best; below zero where the crests pass each other.
 */
lw_status lw_mating_overlap(const lw_mating *mating, lw_length *worst, lw_length *best);

/**
 * The overlap as a share of the female's full height, at worst and, of the sizes that start, at best; plain ratios, 0
 * where there is none. The right thread's own worst is well below 1 too.
 */
lw_status lw_mating_share(const lw_mating *mating,
                          double *worst,
                          double *best);

/**
 * The engaged length at which the pair binds, at the tightest sizes that start (is_loose 0) or the loosest (1); 0 where
 * it does not start at all.
 *
 * Errors: LW_NOT_KNOWN where it never binds, so that the length has no limit.
 */
lw_status lw_mating_length(const lw_mating *mating,
                           int32_t is_loose,
                           lw_length *length);

/**
 * As lw_mating_length, in turns.
 *
 * Errors: LW_NOT_KNOWN where it never binds, so that the turns have no limit.
 */
lw_status lw_mating_turns(const lw_mating *mating, int32_t is_loose, double *turns);

/**
 * What is left, at worst, of a full engagement over a wanted length: the share of it that is reached before the pair
 * binds, times the worst share of the height.
 *
 * Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
 */
lw_status lw_mating_engaged_share(const lw_mating *mating,
                                  lw_length wanted,
                                  double *share);

/**
 * Frees a mating. NULL is allowed.
 */
void lw_mating_free(lw_mating *mating);

/**
 * Every way to tell two threads apart on the "external" or "internal" side. Free it with
 * lw_separation_free.
 *
 * Errors: LW_UNKNOWN_NAME for the side, LW_THREAD_SIDE where class or family of one belong to the other, LW_OUT_OF_RANGE.
 */
lw_status lw_separation_new(const lw_thread *first,
                            const lw_thread *second,
                            const char *side,
                            lw_separation **separation);

/**
 * The number of ways.
 */
lw_status lw_separation_count(const lw_separation *separation, size_t *count);

/**
 * What to measure: "hand", which a look shows, "ten pitches", "diameter", "taper over 5 mm" or "flank angle".
 */
lw_status lw_separation_measure(const lw_separation *separation,
                                size_t index,
                                char *buf,
                                size_t cap,
                                size_t *need);

/**
 * Whether the readings do not overlap, the error of the measurement included: 1, or 0.
 */
lw_status lw_separation_separates(const lw_separation *separation, size_t index, int32_t *separates);

/**
 * The measurement in words: "measure the ten pitches: 10 mm for M11x1, 10.58 mm for 7/16-24".
 */
lw_status lw_separation_words(const lw_separation *separation,
                              size_t index,
                              char *buf,
                              size_t cap,
                              size_t *need);

/**
 * The least and the most length to read on the first thread (0) or the second (1).
 *
 * Errors: LW_NOT_KNOWN where an angle is measured, or the hand looked at.
 */
lw_status lw_separation_length(const lw_separation *separation,
                               size_t index,
                               size_t thread,
                               lw_length *least,
                               lw_length *most);

/**
 * The least and the most angle to read on the first thread (0) or the second (1).
 *
 * Errors: LW_NOT_KNOWN where a length is measured, or the hand looked at.
 */
lw_status lw_separation_angle(const lw_separation *separation,
                              size_t index,
                              size_t thread,
                              lw_angle *least,
                              lw_angle *most);

/**
 * Frees ways to tell threads apart. NULL is allowed.
 */
void lw_separation_free(lw_separation *separation);

/**
 * The shear areas of a male in a female over a wanted engagement. Free it with lw_stripping_free.
 *
 * Errors: LW_THREAD_SIDE, LW_NOT_A_NUMBER, LW_OUT_OF_RANGE, LW_NOT_KNOWN where one thread is tapered or the female takes a
 * tapered male.
 */
lw_status lw_stripping_new(const lw_thread *male,
                           const lw_thread *female,
                           lw_length wanted,
                           lw_stripping **stripping);

/**
 * The length that is engaged: the wanted one, or what is reached before the pair binds.
 */
lw_status lw_stripping_engaged(const lw_stripping *stripping, lw_length *engaged);

/**
 * Area of the male's ridge in mm2, at worst and at best.
 */
lw_status lw_stripping_external_mm2(const lw_stripping *stripping, double *worst, double *best);

/**
 * Area of the female's ridge in mm2, at worst and at best.
 */
lw_status lw_stripping_internal_mm2(const lw_stripping *stripping, double *worst, double *best);

/**
 * What holds of the right male's thread at the wanted length, at worst and at best, a plain ratio: the smaller area over
 * the right one's, but no more than the overlap over the right one's.
 */
lw_status lw_stripping_share(const lw_stripping *stripping,
                             double *worst,
                             double *best);

/**
 * Frees shear areas. NULL is allowed.
 */
void lw_stripping_free(lw_stripping *stripping);

/**
 * How much shorter a flare makes the tube: a piece measured over all before and after one of its ends was flared.
 *
 * Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE where it grew or shortened more than any flare does.
 */
lw_status lw_flare_net_shortening(lw_length before,
                                  lw_length after,
                                  lw_length *net);

/**
 * Compares what stands out of the clamp after the first stroke with what should: a list with LW_FLARE_SLIPPED where the
 * tube slipped back, otherwise empty. Free it with lw_problems_free.
 *
 * Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
 */
lw_status lw_flare_slip(lw_length expected,
                        lw_length measured,
                        lw_problems **problems);

/**
 * The least that a finished flare ("double-45", "bubble" or "single-37") puts between its nut and its seat, along the
 * axis, on a tube with this wall.
 *
 * Errors: LW_SINGLE_45_REFUSED, LW_UNKNOWN_NAME for the flare, LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
 */
lw_status lw_flare_thickness_at_least(const char *flare,
                                      lw_length wall,
                                      lw_length *thickness);

/**
 * Strokes of the tool that a flare takes: two for "double-45", one for the others (common practice, no source).
 *
 * Errors: LW_SINGLE_45_REFUSED, LW_UNKNOWN_NAME for the flare.
 */
lw_status lw_flare_strokes(const char *flare,
                           size_t *strokes);

/**
 * Whether a flare belongs to a seat ("inverted-45", "bubble", "cone-37" or "unknown"): "fits", "does not fit" or "not
 * known", which never counts as yes.
 *
 * Errors: LW_SINGLE_45_REFUSED, LW_UNKNOWN_NAME.
 */
lw_status lw_flare_fits_seat(const char *flare,
                             const char *seat,
                             char *buf,
                             size_t cap,
                             size_t *need);

/**
 * Whether a nut's nose ("coned", "flat", "sleeve" or "unknown") belongs to a flare: "fits", "does not fit" or "not known",
 * which never counts as yes (common practice, no source).
 *
 * Errors: LW_SINGLE_45_REFUSED, LW_UNKNOWN_NAME.
 */
lw_status lw_flare_fits_nose(const char *flare,
                             const char *nose,
                             char *buf,
                             size_t cap,
                             size_t *need);

/**
 * Tube that must stand out of the clamp before a flare ("double-45" or "bubble") of this finished diameter is formed, on
 * tube with this outside diameter and wall. Nobody knows beforehand how the wall stretches, so it is one of "keeps
 * length", "uniaxial" and "keeps wall": the middle of the wall keeps its length, thins as under hoop tension alone, or
 * keeps its thickness. The front angle of a bubble flare is an assumption.
 *
 * Errors: LW_SINGLE_45_REFUSED, LW_UNKNOWN_NAME, LW_NOT_KNOWN for "single-37", whose geometry is not computed,
 * LW_NOT_A_NUMBER, LW_OUT_OF_RANGE, also where the diameter leaves no room for two leaves.
 */
lw_status lw_flare_stick_out(const char *flare,
                             const char *stretch,
                             lw_length od,
                             lw_length wall,
                             lw_length diameter,
                             lw_length *stick_out);

/**
 * Height of a finished flare from where the tube starts to widen.
 *
 * Errors: as lw_flare_stick_out.
 */
lw_status lw_flare_height(const char *flare,
                          lw_length od,
                          lw_length wall,
                          lw_length diameter,
                          lw_length *height);

/**
 * How much shorter a flare makes the tube, tip to tip, by its geometry: lw_flare_stick_out less lw_flare_height.
 * lw_flare_net_shortening gives the same from a test piece, which wins.
 *
 * Errors: as lw_flare_stick_out.
 */
lw_status lw_flare_net(const char *flare,
                       const char *stretch,
                       lw_length od,
                       lw_length wall,
                       lw_length diameter,
                       lw_length *net);

/**
 * Every way to the allowance of a flare, the one that wins first: a test piece, the geometry, a rule of the trade. A way
 * that says nothing is not in the list. least and most are the smallest and the largest diameter of the finished flare;
 * both lw_unknown_length() where the public figures are taken, if there are any for this tube and wall. before and after
 * are a test piece over all before and after one of its ends was flared; both lw_unknown_length() where there is none.
 * Free it with lw_allowances_free.
 *
 * Errors: LW_SINGLE_45_REFUSED, LW_UNKNOWN_NAME for the flare, LW_NOT_A_NUMBER, also where one of two lengths that
 * belong together is unknown, LW_OUT_OF_RANGE, LW_NOT_KNOWN where no way says anything.
 */
lw_status lw_flare_allowances(const char *flare,
                              lw_length od,
                              lw_length wall,
                              lw_length least,
                              lw_length most,
                              lw_length before,
                              lw_length after,
                              lw_allowances **allowances);

/**
 * The number of ways.
 */
lw_status lw_allowances_count(const lw_allowances *allowances, size_t *count);

/**
 * What a way is: "test piece", "geometry" or "rule".
 */
lw_status lw_allowances_way(const lw_allowances *allowances,
                            size_t index,
                            char *buf,
                            size_t cap,
                            size_t *need);

/**
 * Tube that must stand out before forming, by this way.
 *
 * Errors: LW_NOT_KNOWN where the way does not say it.
 */
lw_status lw_allowances_stick_out(const lw_allowances *allowances,
                                  size_t index,
                                  lw_length *least,
                                  lw_length *most);

/**
 * How much shorter the tube gets, tip to tip, by this way.
 *
 * Errors: LW_NOT_KNOWN where the way does not say it.
 */
lw_status lw_allowances_net_shortening(const lw_allowances *allowances,
                                       size_t index,
                                       lw_length *least,
                                       lw_length *most);

/**
 * What is added to the cut as a whole, shortening and spare together, by this way.
 *
 * Errors: LW_NOT_KNOWN where the way does not say it.
 */
lw_status lw_allowances_cut_allowance(const lw_allowances *allowances,
                                      size_t index,
                                      lw_length *cut_allowance);

/**
 * Where a way's figures come from, and how that was checked.
 */
lw_status lw_allowances_source(const lw_allowances *allowances,
                               size_t index,
                               char *buf,
                               size_t cap,
                               size_t *need);

/**
 * Frees a list of allowances. NULL is allowed.
 */
void lw_allowances_free(lw_allowances *allowances);

/**
 * What seals a hose end: "washer" or "flare". name is "male-washer" (screwed in, a washer under its shoulder),
 * "female-flare" (takes the nut of a flared line) or "banjo" (a ring held by a hollow bolt).
 *
 * Errors: LW_UNKNOWN_NAME.
 */
lw_status lw_hose_end_sealed_by(const char *name,
                                char *buf,
                                size_t cap,
                                size_t *need);

/**
 * Washers on a hose end: one under a shoulder, two at a banjo, none where a flare seals (common practice, no source).
 *
 * Errors: LW_UNKNOWN_NAME.
 */
lw_status lw_hose_end_washers(const char *name,
                              size_t *count);

/**
 * Compares the washers that somebody put on a hose end, or plans to, with what it needs: a list with LW_WASHER_ON_FLARE
 * or LW_WASHER_COUNT, empty where they are right. Free it with lw_problems_free.
 *
 * Errors: LW_UNKNOWN_NAME.
 */
lw_status lw_hose_end_check(const char *name,
                            size_t washers,
                            lw_problems **problems);

/**
 * Washers to buy for n hose ends, each by its name (see lw_hose_end_sealed_by) and its thread ("M10x1"): what the joints
 * need, and one spare of each size. Ends without a washer add nothing. Free it with lw_washers_free.
 *
 * Errors: LW_THREAD_SIDE for an internal thread under a washer, LW_OUT_OF_RANGE for a taper one, which seals on itself,
 * LW_UNKNOWN_NAME for an end, LW_THREAD_AMBIGUOUS, LW_THREAD_CONTRADICTION, LW_HEX_NOT_THREAD, LW_UNREADABLE for
 * a thread; the error names it by its index, which counts from 0.
 */
lw_status lw_washers_new(const char *const *ends,
                         const char *const *threads,
                         size_t n,
                         lw_washers **washers);

/**
 * The number of rows: threads that need washers.
 */
lw_status lw_washers_count(const lw_washers *washers, size_t *count);

/**
 * The thread that the washers of a row go on.
 */
lw_status lw_washers_thread(const lw_washers *washers, size_t index, char *buf, size_t cap, size_t *need);

/**
 * The washers of a row: how many the joints need, always new ones, and how many spares.
 */
lw_status lw_washers_to_buy(const lw_washers *washers, size_t index, size_t *needed, size_t *spares);

/**
 * Frees a list of washers. NULL is allowed.
 */
void lw_washers_free(lw_washers *washers);

/**
 * Smallest and largest diameter of a finished flare ("double-45", "bubble" or "single-37") on a tube, and the thickest
 * wall that they are for.
 *
 * Errors: LW_NOT_KNOWN where no public text was seen, LW_SINGLE_45_REFUSED, LW_UNKNOWN_NAME for the flare,
 * LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
 */
lw_status lw_flare_size(const char *flare,
                        lw_length od,
                        lw_length *least,
                        lw_length *most,
                        lw_length *wall_most);

/**
 * Smallest and largest diameter of a finished flare on a tube with this wall, as lw_flare_size has them.
 *
 * Errors: LW_NOT_KNOWN where no public text was seen, and for a wall thicker than its figures are for;
 * LW_SINGLE_45_REFUSED, LW_UNKNOWN_NAME for the flare, LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
 */
lw_status lw_flare_known_diameters(const char *flare,
                                   lw_length od,
                                   lw_length wall,
                                   lw_length *least,
                                   lw_length *most);

/**
 * Where the diameters of lw_flare_size were read, and how that was checked.
 *
 * Errors: as lw_flare_size.
 */
lw_status lw_flare_size_source(const char *flare, lw_length od, char *buf, size_t cap, size_t *need);

/**
 * The number of standards of flared lines and their fittings that the library has heard of.
 */
lw_status lw_flare_standard_count(size_t *count);

/**
 * Number and edition of a standard, as seen.
 */
lw_status lw_flare_standard_name(size_t index, char *buf, size_t cap, size_t *need);

/**
 * What a standard covers.
 */
lw_status lw_flare_standard_covers(size_t index, char *buf, size_t cap, size_t *need);

/**
 * How that was checked: "seen", "seen second-hand", "from memory, not checked" and so on.
 */
lw_status lw_flare_standard_checked(size_t index, char *buf, size_t cap, size_t *need);

/**
 * Where what a standard covers comes from: the text with its edition, the place in it, and how that was checked.
 *
 * Errors: LW_INDEX_OUT_OF_RANGE.
 */
lw_status lw_flare_standard_source(size_t index,
                                   char *buf,
                                   size_t cap,
                                   size_t *need);

/**
 * The number of rows of threads by seat and tube.
 */
lw_status lw_usual_thread_count(size_t *count);

/**
 * The designation of a usual thread. A thread never tells the seat: see lw_seats_of_thread.
 */
lw_status lw_usual_thread_designation(size_t index, char *buf, size_t cap, size_t *need);

/**
 * The standard that names a usual thread.
 */
lw_status lw_usual_thread_standard(size_t index, char *buf, size_t cap, size_t *need);

/**
 * The seat that a usual thread goes with: "inverted-45", "bubble" or "cone-37".
 */
lw_status lw_usual_thread_seat(size_t index, char *buf, size_t cap, size_t *need);

/**
 * Outside diameter of the tube that a usual thread goes with.
 */
lw_status lw_usual_thread_od(size_t index, lw_length *od);

/**
 * How a row of usual threads was checked.
 */
lw_status lw_usual_thread_checked(size_t index, char *buf, size_t cap, size_t *need);

/**
 * Where a usual thread comes from: the text with its edition, the place in it, and how that was checked.
 *
 * Errors: LW_INDEX_OUT_OF_RANGE.
 */
lw_status lw_usual_thread_source(size_t index, char *buf, size_t cap, size_t *need);

/**
 * The number of seats that a thread ("M10x1") is known with on a tube. More than one says that the thread does not
 * settle the seat; none says that nothing is known.
 *
 * Errors: LW_THREAD_AMBIGUOUS, LW_THREAD_CONTRADICTION, LW_HEX_NOT_THREAD, LW_UNREADABLE, LW_NOT_A_NUMBER,
 * LW_OUT_OF_RANGE.
 */
lw_status lw_seats_of_thread_count(const char *thread,
                                   lw_length od,
                                   size_t *count);

/**
 * One of the seats that a thread is known with on a tube: "inverted-45", "bubble" or "cone-37".
 *
 * Errors: as lw_seats_of_thread_count.
 */
lw_status lw_seats_of_thread(const char *thread,
                             lw_length od,
                             size_t index,
                             char *buf,
                             size_t cap,
                             size_t *need);

/**
 * The number of hexagons that are met with threads. They are for choosing a spanner, and no way to a thread.
 */
lw_status lw_hexagon_count(size_t *count);

/**
 * Where a hexagon is met: "M10x1 nut".
 */
lw_status lw_hexagon_on(size_t index, char *buf, size_t cap, size_t *need);

/**
 * A hexagon across its flats.
 */
lw_status lw_hexagon_across_flats(size_t index, lw_length *across_flats);

/**
 * How a row of hexagons was checked.
 */
lw_status lw_hexagon_checked(size_t index, char *buf, size_t cap, size_t *need);

/**
 * Where a hexagon comes from: the text with its edition, the place in it, and how that was checked.
 *
 * Errors: LW_INDEX_OUT_OF_RANGE.
 */
lw_status lw_hexagon_source(size_t index, char *buf, size_t cap, size_t *need);

/**
 * A tube full of fluid, with what is known of its metal, and its ends along the axis "closed" (free to move, the wall
 * carries the pressure on them), "open" (sliding in seals) or "fixed". Free it with lw_filled_tube_free.
 *
 * Errors: LW_NOT_KNOWN where the metal's modulus or Poisson's ratio or the fluid's bulk modulus is missing,
 * LW_UNKNOWN_NAME for the ends.
 */
lw_status lw_filled_tube_new(const lw_tube *tube,
                             const lw_properties *metal,
                             const char *ends,
                             const lw_fluid *fluid,
                             lw_filled_tube **filled);

/**
 * Share of its bore that the wall alone gains per megapascal.
 */
lw_status lw_filled_tube_wall_compliance_per_mpa(const lw_filled_tube *filled, double *compliance_per_mpa);

/**
 * Share of its bore that wall and fluid together take per megapascal.
 */
lw_status lw_filled_tube_compliance_per_mpa(const lw_filled_tube *filled, double *compliance_per_mpa);

/**
 * Bulk modulus that the fluid seems to have in this tube.
 */
lw_status lw_filled_tube_effective_bulk_modulus(const lw_filled_tube *filled, lw_pressure *bulk_modulus);

/**
 * Fluid to be pressed into a length of it to raise its pressure, in milliliters.
 *
 * Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE, also for more than a twentieth of the volume, over which stiffness is not constant.
 */
lw_status lw_filled_tube_volume_to_raise_ml(const lw_filled_tube *filled,
                                            lw_length length,
                                            lw_pressure pressure,
                                            double *volume_ml);

/**
 * By how much the pressure of a shut-off, full length rises when it is warmed throughout; negative when it cools. A fall goes
 * down to nothing and no further: one of more than the line's pressure says that the fluid parts.
 *
 * Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE, also where fluid and bore would part by more than a twentieth of the volume,
 * LW_NOT_KNOWN for a fluid without a thermal expansion.
 */
lw_status lw_filled_tube_pressure_of_warming(const lw_filled_tube *filled,
                                             double warming_k,
                                             double wall_expansion_per_k,
                                             lw_pressure *rise);

/**
 * Speed of a pressure wave along it, in meters per second.
 *
 * Errors: LW_NOT_KNOWN for a fluid without a density.
 */
lw_status lw_filled_tube_wave_speed_m_per_s(const lw_filled_tube *filled, double *speed_m_per_s);

/**
 * Frees a tube full of fluid. NULL is allowed.
 */
void lw_filled_tube_free(lw_filled_tube *filled);

/**
 * A fluid of which nothing is known yet but what it is called. Free it with lw_fluid_free.
 */
lw_status lw_fluid_new(const char *name, lw_fluid **fluid);

/**
 * Brake fluid on glycol, by what could be found: most of it from memory, as lw_fluid_source says. Free it with
 * lw_fluid_free.
 */
lw_status lw_fluid_glycol(lw_fluid **fluid);

/**
 * Sets the mass per volume, with where it was read.
 *
 * Errors: LW_FIELD_MISSING for an empty source, LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
 */
lw_status lw_fluid_set_density(lw_fluid *fluid, double density_kg_per_m3, const char *source);

/**
 * Sets the bulk modulus, with where it was read. Errors: as lw_fluid_set_density.
 */
lw_status lw_fluid_set_bulk_modulus(lw_fluid *fluid, lw_pressure bulk_modulus, const char *source);

/**
 * Sets the growth in volume per kelvin as a share, with where it was read. Errors: as lw_fluid_set_density.
 */
lw_status lw_fluid_set_expansion(lw_fluid *fluid, double expansion_per_k, const char *source);

/**
 * The fluid's name.
 */
lw_status lw_fluid_name(const lw_fluid *fluid, char *buf, size_t cap, size_t *need);

/**
 * Mass per volume. Errors: LW_NOT_KNOWN.
 */
lw_status lw_fluid_density(const lw_fluid *fluid, double *density_kg_per_m3);

/**
 * Bulk modulus. Errors: LW_NOT_KNOWN.
 */
lw_status lw_fluid_bulk_modulus(const lw_fluid *fluid, lw_pressure *bulk_modulus);

/**
 * Growth in volume per kelvin as a share. Errors: LW_NOT_KNOWN.
 */
lw_status lw_fluid_expansion(const lw_fluid *fluid, double *expansion_per_k);

/**
 * Where a figure was read, and how that was checked: "density", "bulk_modulus" or "expansion".
 *
 * Errors: LW_NOT_KNOWN where the figure is not, LW_UNKNOWN_NAME.
 */
lw_status lw_fluid_source(const lw_fluid *fluid, const char *figure, char *buf, size_t cap, size_t *need);

/**
 * Frees a fluid. NULL is allowed.
 */
void lw_fluid_free(lw_fluid *fluid);

/**
 * A volume in milliliters and the fluid in it. Free it with lw_hold_free.
 *
 * Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE, LW_NOT_KNOWN for a fluid without a bulk modulus.
 */
lw_status lw_hold_new(double volume_ml, const lw_fluid *fluid, lw_hold **hold);

/**
 * The volume by which the fluid grows when it is warmed, in milliliters; negative when it cools. A leak smaller than this,
 * for the doubt in the temperature, cannot be told from weather: the blind spot of the test.
 *
 * Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE, also where the fluid would grow or shrink by more than a quarter, LW_NOT_KNOWN for
 * a fluid without a thermal expansion.
 */
lw_status lw_hold_volume_of_temperature_ml(const lw_hold *hold,
                                           double warming_k,
                                           double *volume_ml);

/**
 * By how much warming raises the pressure of the ideal rigid volume; cooling lowers it, down to nothing and no further.
 *
 * Errors: as lw_hold_volume_of_temperature_ml, LW_OUT_OF_RANGE from a twentieth of the volume on.
 */
lw_status lw_hold_ideal_rigid_warming(const lw_hold *hold,
                                      double warming_k,
                                      lw_pressure *rise);

/**
 * By how much a loss, in milliliters, lowers the pressure of the ideal rigid volume, down to nothing and no further. What is not
 * rigid lowers it less.
 *
 * Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE, also for a loss of more than a twentieth of the volume.
 */
lw_status lw_hold_ideal_rigid_pressure(const lw_hold *hold,
                                       double lost_ml,
                                       lw_pressure *fall);

/**
 * The loss that lowers the pressure of the ideal rigid volume by as much as can just be read off the gauge, in
 * milliliters. Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE, also for a loss of more than a twentieth of the volume.
 */
lw_status lw_hold_ideal_rigid_loss_ml(const lw_hold *hold,
                                      lw_pressure fall,
                                      double *lost_ml);

/**
 * Frees a hold. NULL is allowed.
 */
void lw_hold_free(lw_hold *hold);

/**
 * A tube with what is known of its metal, and of the fluid in it; empty where `fluid` is NULL. Free it with lw_span_free.
 *
 * Errors: LW_NOT_KNOWN where the metal's modulus or one of the densities is missing.
 */
lw_status lw_span_new(const lw_tube *tube,
                      const lw_properties *metal,
                      const lw_fluid *fluid,
                      lw_span **span);

/**
 * Mass of a length with the fluid in it, in grams. Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
 */
lw_status lw_span_mass_g(const lw_span *span, lw_length length, double *mass_g);

/**
 * First bending frequency of a span, in hertz; its clips are "pinned" (let it tilt), "clamped" or "clamped-pinned".
 *
 * Errors: LW_UNKNOWN_NAME, LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
 */
lw_status lw_span_first_frequency_hz(const lw_span *span,
                                     lw_length length,
                                     const char *ends,
                                     double *frequency_hz);

/**
 * The span whose first frequency is the wanted one; clips nearer than that raise it.
 *
 * Errors: as lw_span_first_frequency_hz, LW_OUT_OF_RANGE also for a span that no clips are set at.
 */
lw_status lw_span_length_for(const lw_span *span, double wanted_hz, const char *ends, lw_length *length);

/**
 * Frees a span. NULL is allowed.
 */
void lw_span_free(lw_span *span);

/**
 * The number of distances between clips that public texts give for a tube diameter; 0 where none is known. None is of
 * brakes.
 *
 * Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
 */
lw_status lw_handbook_spacing_count(lw_length od,
                                    size_t *count);

/**
 * What a distance is said of. Errors: as lw_handbook_spacing_count, LW_INDEX_OUT_OF_RANGE.
 */
lw_status lw_handbook_spacing_scope(lw_length od, size_t index, char *buf, size_t cap, size_t *need);

/**
 * Smallest and largest distance of a row; the smallest is lw_unknown_length() where the row gives only one. Errors: as
 * lw_handbook_spacing_scope.
 */
lw_status lw_handbook_spacing(lw_length od,
                              size_t index,
                              lw_length *least,
                              lw_length *most);

/**
 * Where it was read, and how that was checked. Errors: as lw_handbook_spacing_scope.
 */
lw_status lw_handbook_spacing_source(lw_length od, size_t index, char *buf, size_t cap, size_t *need);

/**
 * Words for a whole quarter turn, seen along the direction of work: "quarter turn clockwise", "flip over".
 *
 * Errors: LW_NOT_KNOWN for other turns, LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
 */
lw_status lw_turn_words(lw_angle rotation, char *buf, size_t cap, size_t *need);

/**
 * The turn on a clock seen along the direction of work, with the last bend at 12: "3:00".
 *
 * Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
 */
lw_status lw_turn_clock(lw_angle rotation, char *buf, size_t cap, size_t *need);

/**
 * What an inclinometer reads, positive upward, on the leg after a bend while the bend before it lies flat and goes to
 * the left (1) or the right (0), seen from above along the direction of work.
 *
 * Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
 */
lw_status lw_turn_inclinometer(lw_angle bend,
                               lw_angle rotation,
                               int32_t is_last_to_left,
                               lw_angle *reading);

/**
 * A path from its legs, corner to corner, A to B: one leg more than bends, a rotation for each bend but the first, and
 * one radius for all bends or one each. A rotation is the turn of the bend plane about the straight before the bend,
 * clockwise looking from A; a radius is the one as formed. Free it with lw_path_free.
 *
 * Errors: LW_COUNT_MISMATCH, LW_NO_CORNER for a bend of 180 degrees or more, LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
 */
lw_status lw_path_from_legs(const lw_length *legs,
                            size_t n_legs,
                            const lw_angle *bends,
                            size_t n_bends,
                            const lw_angle *rotations,
                            size_t n_rotations,
                            const lw_length *radii,
                            size_t n_radii,
                            lw_path **path);

/**
 * A path from its straights, tangent to tangent; otherwise as lw_path_from_legs. Free it with lw_path_free.
 *
 * Errors: LW_COUNT_MISMATCH, LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
 */
lw_status lw_path_from_straights(const lw_length *straights,
                                 size_t n_straights,
                                 const lw_angle *bends,
                                 size_t n_bends,
                                 const lw_angle *rotations,
                                 size_t n_rotations,
                                 const lw_length *radii,
                                 size_t n_radii,
                                 lw_path **path);

/**
 * A path from its legs as a tape over the outer edges measures them, outer corner to outer corner, on tube of diameter
 * od; otherwise as lw_path_from_legs. Free it with lw_path_free.
 *
 * Errors: as lw_path_from_legs.
 */
lw_status lw_path_from_outer_legs(const lw_length *legs,
                                  size_t n_legs,
                                  const lw_angle *bends,
                                  size_t n_bends,
                                  const lw_angle *rotations,
                                  size_t n_rotations,
                                  const lw_length *radii,
                                  size_t n_radii,
                                  lw_length od,
                                  lw_path **path);

/**
 * A path through points: start, corners, end. xyz_mm holds n_points times x, y, z in millimeters; every corner is
 * rounded with the one radius or with its own. Points that coincide or lie on a straight are no corners. Free it
 * with lw_path_free.
 *
 * Errors: LW_PATH_DEGENERATE when the points make no line, LW_COUNT_MISMATCH for the radii, LW_NOT_A_NUMBER,
 * LW_OUT_OF_RANGE.
 */
lw_status lw_path_from_vertices(const double *xyz_mm,
                                size_t n_points,
                                const lw_length *radii,
                                size_t n_radii,
                                lw_path **path);

/**
 * The number of bends; there is one straight and one leg more.
 */
lw_status lw_path_bend_count(const lw_path *path, size_t *count);

/**
 * A straight, tangent to tangent. It is negative where two bends overlap that were given by legs or points.
 */
lw_status lw_path_straight(const lw_path *path, size_t index, lw_length *straight);

/**
 * A leg, corner to corner.
 *
 * Errors: LW_NO_CORNER where the path has a bend of 180 degrees or more.
 */
lw_status lw_path_leg(const lw_path *path, size_t index, lw_length *leg);

/**
 * How far a bend is bent; 0 is straight.
 */
lw_status lw_path_angle(const lw_path *path, size_t index, lw_angle *angle);

/**
 * The turn of a bend's plane against the plane of the bend before it, above -180 and up to 180 degrees.
 *
 * Errors: LW_NOT_KNOWN for the first bend, which has none.
 */
lw_status lw_path_rotation(const lw_path *path, size_t index, lw_angle *rotation);

/**
 * The centerline radius of a bend, as formed.
 */
lw_status lw_path_radius(const lw_path *path, size_t index, lw_length *radius);

/**
 * Length along the center line: straights and arcs.
 */
lw_status lw_path_developed_length(const lw_path *path, lw_length *length);

/**
 * How much shorter the path is than its legs together.
 *
 * Errors: LW_NO_CORNER where the path has a bend of 180 degrees or more.
 */
lw_status lw_path_total_gain(const lw_path *path, lw_length *gain);

/**
 * The corner points: start, each corner, end, as x, y, z in millimeters, in an array with room for cap_points points
 * (three numbers each). need_points receives the number of points. The path starts at 0, 0, 0 along x and turns first
 * toward y.
 *
 * Errors: LW_NO_CORNER where the path has a bend of 180 degrees or more.
 */
lw_status lw_path_vertices_mm(const lw_path *path,
                              double *xyz_mm,
                              size_t cap_points,
                              size_t *need_points);

/**
 * The far end, as x, y, z in millimeters in an array of three, in the pose of lw_path_vertices_mm. Defined for bends
 * of any size.
 */
lw_status lw_path_end_point_mm(const lw_path *path,
                               double *xyz_mm);

/**
 * The same line from B to A, as a new path. Rotations keep their signs. Free it with lw_path_free.
 */
lw_status lw_path_reversed(const lw_path *path, lw_path **reversed);

/**
 * The other hand, as a new path: all rotations negated. Free it with lw_path_free.
 */
lw_status lw_path_mirrored(const lw_path *path, lw_path **mirrored);

/**
 * Frees a path. NULL is allowed.
 */
void lw_path_free(lw_path *path);

/**
 * Says how one bend is made: "former", "hand" or "mandrel". A new path's bends are made on the former; the others take
 * neither setting nor grip from the bench.
 *
 * Errors: LW_UNKNOWN_NAME.
 */
lw_status lw_path_set_making(lw_path *path,
                             size_t index,
                             const char *making);

/**
 * How a bend is made: "former", "hand" or "mandrel".
 */
lw_status lw_path_making(const lw_path *path, size_t index, char *buf, size_t cap, size_t *need);

/**
 * Where a path is at a station, a distance along the center line from end A, in the pose of lw_path_vertices_mm: the
 * point in millimeters and the direction from A to B, of length one, each in an array of three.
 *
 * Errors: LW_OUT_OF_RANGE beyond either end, LW_NOT_A_NUMBER.
 */
lw_status lw_path_place_at(const lw_path *path,
                           lw_length station,
                           double *xyz_mm,
                           double *direction);

/**
 * Where a path is at end B; otherwise as lw_path_place_at.
 */
lw_status lw_path_end_place(const lw_path *path, double *xyz_mm, double *direction);

/**
 * The box around tube of diameter od along a path, its sides along the axes of lw_path_vertices_mm: the corners with
 * the smallest and the largest coordinates in millimeters, each in an array of three.
 *
 * Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
 */
lw_status lw_path_extent_mm(const lw_path *path,
                            lw_length od,
                            double *low_mm,
                            double *high_mm);

/**
 * Compares a line as it was measured with what it shall be: every straight, bend and turn that differs by more than
 * the tolerances is named, and a mirror part is named as that; the list is empty where they agree. Free it with
 * lw_problems_free.
 *
 * Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE for the tolerances.
 */
lw_status lw_path_compare(const lw_path *wanted,
                          const lw_path *measured,
                          lw_length length,
                          lw_angle angle,
                          lw_problems **problems);

/**
 * A springback whose two parts are known: springback = constant + proportional x set angle, where proportional is a
 * plain ratio. Free it with lw_springback_free.
 *
 * Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
 */
lw_status lw_springback_new(lw_angle constant,
                            double proportional,
                            lw_springback **springback);

/**
 * A springback from n trial bends: for each the tool was bent to an angle of `set`, and the one of `got` remained. One
 * trial, or trials at one angle only, give a springback in proportion to the angle, and a plan then says that it is
 * weak. Free it with lw_springback_free.
 *
 * Errors: LW_TRIALS_UNUSABLE, LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
 */
lw_status lw_springback_from_trials(const lw_angle *set,
                                    const lw_angle *got,
                                    size_t n,
                                    lw_springback **springback);

/**
 * A springback read back from where it was kept: its two parts, what it rests on by the name that lw_springback_basis gives,
 * and the n trials it was fitted to, of lw_springback_trials. Free it with lw_springback_free.
 *
 * Errors: LW_UNKNOWN_NAME, LW_FIELDS_CONFLICT for trials where none belong, or none where they do, LW_TRIALS_UNUSABLE,
 * LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
 */
lw_status lw_springback_kept(lw_angle constant,
                             double proportional,
                             const char *basis,
                             const lw_angle *set,
                             const lw_angle *got,
                             size_t n,
                             lw_springback **springback);

/**
 * The trials it was fitted to: fills `set` and `got`, each with room for cap angles; none for one without trials.
 *
 * Errors: LW_SPACE_TOO_SMALL.
 */
lw_status lw_springback_trials(const lw_springback *springback,
                               lw_angle *set,
                               lw_angle *got,
                               size_t cap,
                               size_t *need);

/**
 * The record of the trials it was fitted to. Free it with lw_calibration_free.
 *
 * Errors: LW_NOT_KNOWN where it has none.
 */
lw_status lw_springback_calibration(const lw_springback *springback, lw_calibration **calibration);

/**
 * Whether it rests on trials at one angle only, with no belief beside them.
 */
lw_status lw_springback_is_weak(const lw_springback *springback, int32_t *is_weak);

/**
 * The angle to bend to so that the wanted angle remains.
 *
 * Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
 */
lw_status lw_springback_setting(const lw_springback *springback, lw_angle wanted, lw_angle *setting);

/**
 * The part of the springback that does not depend on the angle.
 */
lw_status lw_springback_constant(const lw_springback *springback, lw_angle *constant);

/**
 * The part of the springback in proportion to the set angle, a plain ratio.
 */
lw_status lw_springback_proportional(const lw_springback *springback, double *proportional);

/**
 * What it rests on: "given", "trials", "mechanics", "prior" or "blend".
 */
lw_status lw_springback_basis(const lw_springback *springback, char *buf, size_t cap, size_t *need);

/**
 * Frees a springback. NULL is allowed.
 */
void lw_springback_free(lw_springback *springback);

/**
 * The record of n trial bends of a tube on a former, by its name in the workshop, made on a day as year-month-day
 * ("2026-05-14"); `revision` names this state of the record. Free it with lw_calibration_free.
 *
 * Errors: LW_FIELD_MISSING for an empty former or revision, LW_UNREADABLE for the date, LW_TRIALS_UNUSABLE for a trial
 * that sprang forward, LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
 */
lw_status lw_calibration_new(const lw_angle *set,
                             const lw_angle *got,
                             size_t n,
                             const lw_tube *tube,
                             const char *former,
                             const char *date,
                             const char *revision,
                             lw_calibration **calibration);

/**
 * The springback of its trials, with this record in it. Free it with lw_springback_free.
 *
 * Errors: as lw_springback_from_trials.
 */
lw_status lw_calibration_springback(const lw_calibration *calibration, lw_springback **springback);

/**
 * The trials: fills `set` with the angles the tool was bent to and `got` with those that remained, in the order they were
 * given, each with room for cap angles. `need` is their number.
 *
 * Errors: LW_SPACE_TOO_SMALL.
 */
lw_status lw_calibration_trials(const lw_calibration *calibration,
                                lw_angle *set,
                                lw_angle *got,
                                size_t cap,
                                size_t *need);

/**
 * The tube they were made of: its size and its material. How tight its maker lets it be bent is no part of a record. Free
 * it with lw_tube_free.
 */
lw_status lw_calibration_tube(const lw_calibration *calibration,
                              lw_tube **tube);

/**
 * The former they were made on, by its name in the workshop.
 */
lw_status lw_calibration_former(const lw_calibration *calibration, char *buf, size_t cap, size_t *need);

/**
 * The day they were made, as year-month-day ("2026-05-14").
 */
lw_status lw_calibration_date(const lw_calibration *calibration, char *buf, size_t cap, size_t *need);

/**
 * Name or number of this state of the record.
 */
lw_status lw_calibration_revision(const lw_calibration *calibration, char *buf, size_t cap, size_t *need);

/**
 * The record in one line: tube, former, date, revision.
 */
lw_status lw_calibration_text(const lw_calibration *calibration, char *buf, size_t cap, size_t *need);

/**
 * Whether a tube is of the size and the material of the trials: 1 or 0.
 */
lw_status lw_calibration_is_for(const lw_calibration *calibration, const lw_tube *tube, int32_t *is_for);

/**
 * Adds the record of its trials to a springback that was fitted to them in another way, such as with a prior.
 *
 * Errors: LW_FIELDS_CONFLICT where the record has other trials.
 */
lw_status lw_springback_set_calibration(lw_springback *springback, const lw_calibration *calibration);

/**
 * The record of a springback's trials in one line, empty where there is none: tube, former, date, revision.
 */
lw_status lw_springback_calibration_text(const lw_springback *springback,
                                         char *buf,
                                         size_t cap,
                                         size_t *need);

/**
 * Frees a record. NULL is allowed.
 */
void lw_calibration_free(lw_calibration *calibration);

/**
 * The line through n trial bends, at least two at clearly different angles; see lw_springback_from_trials. Free it with
 * lw_trial_fit_free.
 *
 * Errors: LW_TRIALS_UNUSABLE, LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
 */
lw_status lw_trial_fit_new(const lw_angle *set,
                           const lw_angle *got,
                           size_t n,
                           lw_trial_fit **fit);

/**
 * A belief and n trial bends, none will do, weighed against each other by how sure each is. Free it with
 * lw_trial_fit_free.
 *
 * Errors: LW_STRUCT_SIZE, LW_TRIALS_UNUSABLE, LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
 */
lw_status lw_trial_fit_with_prior(const lw_prior *prior,
                                  const lw_angle *set,
                                  const lw_angle *got,
                                  size_t n,
                                  lw_trial_fit **fit);

/**
 * The springback, for a bench. Free it with lw_springback_free.
 *
 * Errors: LW_OUT_OF_RANGE where the line is no springback.
 */
lw_status lw_trial_fit_springback(const lw_trial_fit *fit, lw_springback **springback);

/**
 * The trials it was made of: fills `set` and `got`, each with room for cap angles; none where there is only a belief. `need` is
 * their number.
 *
 * Errors: LW_SPACE_TOO_SMALL.
 */
lw_status lw_trial_fit_trials(const lw_trial_fit *fit,
                              lw_angle *set,
                              lw_angle *got,
                              size_t cap,
                              size_t *need);

/**
 * What was believed before them. The struct is written whole, its size too.
 *
 * Errors: LW_NOT_KNOWN where nothing was.
 */
lw_status lw_trial_fit_prior(const lw_trial_fit *fit, lw_prior *prior);

/**
 * The step that the angles left were read to, as their numbers show: the coarsest of 1, 1/2, 1/3, 1/4, 1/5, 1/6, 1/10,
 * 1/20, 1/60, 1/50 and 1/100 degree that they are multiples of. A minority read far finer does not count.
 *
 * Errors: LW_NOT_KNOWN where there is none, and without trials.
 */
lw_status lw_trial_fit_reading(const lw_trial_fit *fit,
                               lw_angle *reading);

/**
 * Scatter of one bend, one standard deviation. Without a prior it is at least what the rounding of a reading makes, its step
 * (0.001 degrees where none shows) divided by the root of 12; with one, that of the mean precision of all that it may be.
 *
 * Errors: LW_NOT_KNOWN for two trials without a prior, which lie on any line.
 */
lw_status lw_trial_fit_scatter(const lw_trial_fit *fit,
                               lw_angle *scatter);

/**
 * Standard errors of the constant and of the proportional part.
 *
 * Errors: LW_NOT_KNOWN for two trials without a prior.
 */
lw_status lw_trial_fit_standard_errors(const lw_trial_fit *fit, lw_angle *constant, double *proportional);

/**
 * Interval of the constant part at a chance such as 0.95.
 *
 * Errors: LW_NOT_KNOWN for two trials without a prior, LW_NOT_A_NUMBER, LW_OUT_OF_RANGE for the chance.
 */
lw_status lw_trial_fit_constant_interval(const lw_trial_fit *fit,
                                         double chance,
                                         lw_angle *low,
                                         lw_angle *high);

/**
 * Interval of the proportional part at a chance. Errors: as lw_trial_fit_constant_interval.
 */
lw_status lw_trial_fit_proportional_interval(const lw_trial_fit *fit,
                                             double chance,
                                             double *low,
                                             double *high);

/**
 * Interval of the right setting for a wanted angle at a chance (Fieller's).
 *
 * Neither end is ever below the wanted angle.
 *
 * Errors: LW_NOT_KNOWN for two trials without a prior, and where the trials say so little that it has no end, or that all of it
 * would spring forward;
 * LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
 */
lw_status lw_trial_fit_setting_interval(const lw_trial_fit *fit,
                                        lw_angle wanted,
                                        double chance,
                                        lw_angle *low,
                                        lw_angle *high);

/**
 * How far the next bend at a setting may land from what the line says, either way, at a chance, read as those before.
 *
 * Errors: LW_NOT_KNOWN for two trials without a prior, LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
 */
lw_status lw_trial_fit_next_bend(const lw_trial_fit *fit,
                                 lw_angle setting,
                                 double chance,
                                 lw_angle *half_width);

/**
 * Share of what is known at a setting that comes from the trials: 1 without a prior, 0 without trials. It is
 * the share of the belief's variance there that the trials took away: for one trial there, how much of the way to it the line
 * went.
 *
 * Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
 */
lw_status lw_trial_fit_weight_of_trials(const lw_trial_fit *fit,
                                        lw_angle setting,
                                        double *weight);

/**
 * The trial that does not belong to the others: `number` counts from 1, and is 0 where none stands out, where there are
 * fewer than five, and with a prior.
 */
lw_status lw_trial_fit_outlier(const lw_trial_fit *fit,
                               size_t *number);

/**
 * Whether the trials bend away from a straight line: 1 or 0.
 *
 * Errors: LW_NOT_KNOWN for fewer than five trials at three or more angles, and with a prior.
 */
lw_status lw_trial_fit_is_bent(const lw_trial_fit *fit, int32_t *is_bent);

/**
 * Whether the trials contradict what was believed: 1 where the belief, if it is right, makes trials that lie so far from it less
 * than once in twenty times, else 0. They are weighed against each other all the same, and neither should be trusted before
 * more trials agree with one of them.
 *
 * Errors: LW_NOT_KNOWN without a prior, and without trials.
 */
lw_status lw_trial_fit_is_contradicted(const lw_trial_fit *fit,
                                       int32_t *is_contradicted);

/**
 * Degrees of freedom of what is known of the scatter: the trials less two, with a prior its worth and the trials.
 */
lw_status lw_trial_fit_degrees_of_freedom(const lw_trial_fit *fit,
                                          size_t *degrees_of_freedom);

/**
 * The fewest further bends, from angles that can be tried, after which the interval of every wanted angle's setting reaches
 * no further than half_width either way at a chance, if line and scatter stay as they are; at most twelve. Fills `angles`
 * with the angles to set, in rising order; none where nothing more is needed. `reaches` is how far the farthest interval
 * then reaches, and is_enough is 1 where that is what was asked for.
 *
 * Errors: LW_NOT_KNOWN for two trials without a prior, LW_FIELD_MISSING for an empty list, LW_NOT_A_NUMBER,
 * LW_OUT_OF_RANGE, also for a candidate of 0 degrees, LW_SPACE_TOO_SMALL.
 */
lw_status lw_trial_fit_advice(const lw_trial_fit *fit,
                              const lw_angle *wanted,
                              size_t n_wanted,
                              lw_angle half_width,
                              double chance,
                              const lw_angle *candidates,
                              size_t n_candidates,
                              lw_angle *angles,
                              size_t cap,
                              size_t *need,
                              lw_angle *reaches,
                              int32_t *is_enough);

/**
 * The page of a fit as SVG, for print or a screen: every trial, the line, the band in which the next bend lies at a
 * chance, and what to bend to for each of n wanted angles, at most 14. `record` may be NULL.
 *
 * Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
 */
lw_status lw_springback_page(const lw_trial_fit *fit,
                             const lw_calibration *record,
                             const lw_angle *wanted,
                             size_t n,
                             double chance,
                             char *buf,
                             size_t cap,
                             size_t *need);

/**
 * Frees a fit. NULL is allowed.
 */
void lw_trial_fit_free(lw_trial_fit *fit);

/**
 * A tube whose wall does not harden: beyond its yield strength the stress stays. Free it with lw_mechanics_free.
 *
 * Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
 */
lw_status lw_mechanics_plastic(lw_length od,
                               lw_length wall,
                               lw_pressure modulus,
                               lw_pressure yield_strength,
                               lw_mechanics **mechanics);

/**
 * A tube whose wall hardens along a straight line: beyond its yield strength the stress rises with a tangent modulus.
 * Free it with lw_mechanics_free.
 *
 * Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
 */
lw_status lw_mechanics_bilinear(lw_length od,
                                lw_length wall,
                                lw_pressure modulus,
                                lw_pressure yield_strength,
                                lw_pressure tangent_modulus,
                                lw_mechanics **mechanics);

/**
 * A tube whose wall hardens by a power law: stress = strength_coefficient x strain ^ hardening_exponent where that is
 * below the elastic line. Free it with lw_mechanics_free.
 *
 * Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
 */
lw_status lw_mechanics_power_law(lw_length od,
                                 lw_length wall,
                                 lw_pressure modulus,
                                 lw_pressure strength_coefficient,
                                 double hardening_exponent,
                                 lw_mechanics **mechanics);

/**
 * A tube by its size and what is known of its metal. Of the laws the first is taken that is known: the power law of
 * hardening; else a straight line of it, where there are a yield strength and a tangent modulus; else no hardening beyond
 * the yield strength. Free it with lw_mechanics_free.
 *
 * Errors: LW_NOT_KNOWN naming what is missing, the yield strength also where there is a tangent modulus, which begins
 * there; LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
 */
lw_status lw_mechanics_of_metal(lw_length od,
                                lw_length wall,
                                const lw_properties *metal,
                                lw_mechanics **mechanics);

/**
 * The tube held at a centerline radius, as by the groove of a former. Free it with lw_held_bend_free.
 *
 * Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE, also for a radius of no more than half the tube.
 */
lw_status lw_mechanics_bend(const lw_mechanics *mechanics, lw_length radius, lw_held_bend **bend);

/**
 * Least and most setting for a wanted angle while the strength and the modulus of the material are off by shares of
 * their value, either way. What the model leaves out is not in it.
 *
 * Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
 */
lw_status lw_mechanics_setting_range(const lw_mechanics *mechanics,
                                     lw_length radius,
                                     lw_length arm,
                                     lw_angle wanted,
                                     double strength_scatter,
                                     double modulus_scatter,
                                     lw_angle *least,
                                     lw_angle *most);

/**
 * What mechanics believes before any trial, to be weighed against trials by lw_trial_fit_with_prior: the estimate, spread
 * as strength and modulus scatter (one standard deviation of each, as shares), and a scatter of one bend that counts like
 * `worth` bends.
 *
 * Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
 */
lw_status lw_mechanics_prior(const lw_mechanics *mechanics,
                             lw_length radius,
                             lw_length arm,
                             double strength_scatter,
                             double modulus_scatter,
                             lw_angle bend_scatter,
                             size_t worth,
                             lw_prior *prior);

/**
 * Frees a tube of known material data. NULL is allowed.
 */
void lw_mechanics_free(lw_mechanics *mechanics);

/**
 * The centerline radius it is held at.
 */
lw_status lw_held_bend_radius(const lw_held_bend *bend, lw_length *radius);

/**
 * The bending moment, in newton millimeters.
 */
lw_status lw_held_bend_moment_nmm(const lw_held_bend *bend, double *moment_nmm);

/**
 * Share of the angle that springs back; 1 where the tube never leaves its elastic range.
 */
lw_status lw_held_bend_share(const lw_held_bend *bend, double *share);

/**
 * Centerline radius as formed, after letting go.
 *
 * Errors: LW_NOT_KNOWN where nothing of the bend remains.
 */
lw_status lw_held_bend_formed_radius(const lw_held_bend *bend, lw_length *formed_radius);

/**
 * The springback as a line over the set angle, for a tool whose moment falls to zero along an arm; an arm of 0 mm leaves
 * the constant part out. Free it with lw_springback_free.
 *
 * Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE, also where so much springs back that no setting is credible.
 */
lw_status lw_held_bend_springback(const lw_held_bend *bend,
                                  lw_length arm,
                                  lw_springback **springback);

/**
 * Frees a held bend. NULL is allowed.
 */
void lw_held_bend_free(lw_held_bend *bend);

/**
 * A bench with one former, which leaves a centerline radius of as_formed after springback and must hold grip of
 * straight tube before the bend. Free it with lw_bench_free.
 *
 * Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
 */
lw_status lw_bench_new(lw_length as_formed,
                       lw_length grip,
                       lw_bench **bench);

/**
 * A bench whose former is described by the centerline radius of its groove, for a tube whose material data are known: the
 * radius as formed is computed, and a plan says so. A test piece is better. Free it with lw_bench_free.
 *
 * Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE, also where nothing of the bend would remain.
 */
lw_status lw_bench_of_groove(lw_length groove,
                             lw_length grip,
                             const lw_mechanics *tube,
                             lw_bench **bench);

/**
 * A bench read back from where it was kept, whose former's radius as formed had been computed from the centerline radius of its
 * groove: the two radii of lw_bench_as_formed and lw_bench_groove. A plan says that the radius was computed. Free it with
 * lw_bench_free.
 *
 * Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE, also for a groove wider than the radius as formed: a bend opens when it is let go.
 */
lw_status lw_bench_kept(lw_length as_formed,
                        lw_length grip,
                        lw_length groove,
                        lw_bench **bench);

/**
 * The centerline radius that the bench's former leaves after springback.
 */
lw_status lw_bench_as_formed(const lw_bench *bench, lw_length *as_formed);

/**
 * The straight tube that the bench's former must hold before the bend.
 */
lw_status lw_bench_grip(const lw_bench *bench, lw_length *grip);

/**
 * The centerline radius of the groove of the bench's former, where the radius as formed was computed from it.
 *
 * Errors: LW_NOT_KNOWN where it was given.
 */
lw_status lw_bench_groove(const lw_bench *bench, lw_length *groove);

/**
 * Adds the tool for one form of flare. The tool's text and struct are not needed afterward.
 *
 * Errors: LW_STRUCT_SIZE, LW_SINGLE_45_REFUSED, LW_UNKNOWN_NAME for the flare, LW_FIELDS_CONFLICT when the bench has a
 * tool for that form, LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
 */
lw_status lw_bench_add_flare_tool(lw_bench *bench,
                                  const lw_flare_tool *tool);

/**
 * Sets the springback of the former; without it a plan has no settings.
 */
lw_status lw_bench_set_springback(lw_bench *bench, const lw_springback *springback);

/**
 * Sets the working clearance beside a clamped flare tool; without it 2 mm are assumed and listed as an assumption.
 *
 * Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
 */
lw_status lw_bench_set_clearance(lw_bench *bench,
                                 lw_length clearance);

/**
 * Sets how far a nut must be able to back off; without it 3 mm are assumed and listed as an assumption.
 *
 * Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
 */
lw_status lw_bench_set_back_off(lw_bench *bench, lw_length back_off);

/**
 * Sets a name or number for this state of the bench; it is printed on the card.
 */
lw_status lw_bench_set_revision(lw_bench *bench, const char *revision);

/**
 * Frees a bench. NULL is allowed.
 */
void lw_bench_free(lw_bench *bench);

/**
 * An empty list of test pieces. Free it with lw_pieces_free.
 */
lw_status lw_pieces_new(lw_pieces **pieces);

/**
 * Adds a piece of a length before bending, with its n + 1 legs along the centerline, from end to corner, corner to corner,
 * and corner to end, and the n angles that remained, in order. Where the numbers of the legs do not show which step they were
 * read to, lw_pieces_set_reading says it.
 *
 * Errors: LW_COUNT_MISMATCH, LW_NOT_A_NUMBER, LW_OUT_OF_RANGE, also for a piece that is too short for its own bends even if its
 * legs were read 3 mm too long.
 */
lw_status lw_pieces_add(lw_pieces *pieces,
                        lw_length length,
                        const lw_length *legs,
                        size_t n_legs,
                        const lw_angle *angles,
                        size_t n_angles);

/**
 * The same with legs as a square or a tape laid over the outer edges of the tube measures them, to the outer corners.
 *
 * Errors: as lw_pieces_add, LW_OUT_OF_RANGE also for a leg shorter than what its corners take.
 */
lw_status lw_pieces_add_outer(lw_pieces *pieces,
                              lw_length length,
                              const lw_length *outer_legs,
                              size_t n_legs,
                              const lw_angle *angles,
                              size_t n_angles,
                              lw_length od);

/**
 * Says which step the legs of a piece were read to, where their numbers do not show it; lw_unknown_length() says that they were
 * read to finer than 0.01 mm, so that their rounding does not count. Pieces count from 0 in the order they were added.
 *
 * Errors: LW_INDEX_OUT_OF_RANGE, LW_OUT_OF_RANGE for a step below 0.001 mm or above 10 mm.
 */
lw_status lw_pieces_set_reading(lw_pieces *pieces,
                                size_t index,
                                lw_length reading);

/**
 * The number of test pieces in a list.
 */
lw_status lw_pieces_count(const lw_pieces *pieces, size_t *count);

/**
 * The step that the legs of a piece were read to, as given or as their numbers show: the coarsest of 1/16 in, 1 mm, 1/32 in,
 * 0.5 mm, 1/64 in, 0.25, 0.2, 0.1, 0.05, 0.02 and 0.01 mm that all of them are multiples of; of outer legs as they were read.
 *
 * Errors: LW_INDEX_OUT_OF_RANGE, LW_NOT_KNOWN for finer ones.
 */
lw_status lw_pieces_reading(const lw_pieces *pieces,
                            size_t index,
                            lw_length *reading);

/**
 * The length of a piece before bending.
 *
 * Errors: LW_INDEX_OUT_OF_RANGE.
 */
lw_status lw_pieces_length(const lw_pieces *pieces, size_t index, lw_length *length);

/**
 * The gain of a piece's bends together as measured: how much longer its legs along the centerline are than it was.
 *
 * Errors: LW_INDEX_OUT_OF_RANGE.
 */
lw_status lw_pieces_gain(const lw_pieces *pieces,
                         size_t index,
                         lw_length *gain);

/**
 * The legs of a piece along the centerline, also where outer legs were given: fills `legs`, which has room for cap lengths.
 *
 * Errors: LW_INDEX_OUT_OF_RANGE, LW_SPACE_TOO_SMALL.
 */
lw_status lw_pieces_legs(const lw_pieces *pieces,
                         size_t index,
                         lw_length *legs,
                         size_t cap,
                         size_t *need);

/**
 * The angles of a piece that remained, in order: fills `angles`, which has room for cap of them.
 *
 * Errors: LW_INDEX_OUT_OF_RANGE, LW_SPACE_TOO_SMALL.
 */
lw_status lw_pieces_angles(const lw_pieces *pieces, size_t index, lw_angle *angles, size_t cap, size_t *need);

/**
 * Frees a list of test pieces. NULL is allowed.
 */
void lw_pieces_free(lw_pieces *pieces);

/**
 * The fit to the pieces. Free it with lw_piece_fit_free.
 *
 * Errors: LW_TRIALS_UNUSABLE for no piece, for legs that give no credible radius, and for a piece whose length is more
 * than 3 mm off what all say, or that is more than 3 mm too short for its own bends.
 */
lw_status lw_piece_fit_new(const lw_pieces *pieces,
                           lw_piece_fit **fit);

/**
 * The radius as formed that makes lengths come out: the one for lw_bench_new.
 */
lw_status lw_piece_fit_radius(const lw_piece_fit *fit, lw_length *radius);

/**
 * Its standard error. Errors: LW_NOT_KNOWN for one piece.
 */
lw_status lw_piece_fit_radius_error(const lw_piece_fit *fit, lw_length *radius_error);

/**
 * Scatter of one piece's gain, one standard deviation, and at least what the rounding of lengths, legs and angles makes.
 *
 * Errors: LW_NOT_KNOWN for one piece.
 */
lw_status lw_piece_fit_scatter(const lw_piece_fit *fit,
                               lw_length *scatter);

/**
 * Interval of the radius at a chance such as 0.95, cut at 0: no radius is below nothing.
 *
 * Errors: LW_NOT_KNOWN for one piece, LW_NOT_A_NUMBER, LW_OUT_OF_RANGE for the chance.
 */
lw_status lw_piece_fit_radius_interval(const lw_piece_fit *fit,
                                       double chance,
                                       lw_length *low,
                                       lw_length *high);

/**
 * The gain of a bend on this former. Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
 */
lw_status lw_piece_fit_gain(const lw_piece_fit *fit, lw_angle angle, lw_length *gain);

/**
 * Interval of that gain at a chance; one more piece scatters in addition.
 *
 * Errors: as lw_piece_fit_radius_interval, LW_OUT_OF_RANGE also for the angle.
 */
lw_status lw_piece_fit_gain_interval(const lw_piece_fit *fit,
                                     lw_angle angle,
                                     double chance,
                                     lw_length *low,
                                     lw_length *high);

/**
 * Radius of the arcs and stretch as two figures: the share says how much longer an arc is than the tube that went into
 * it; negative where it is shorter.
 *
 * Errors: LW_NOT_KNOWN where the angles of the pieces are too much alike to tell them apart.
 */
lw_status lw_piece_fit_stretch(const lw_piece_fit *fit,
                               lw_length *radius,
                               double *share);

/**
 * Standard error of the radius of the arcs that lw_piece_fit_stretch gives, which is another than that of lw_piece_fit_radius.
 *
 * Errors: LW_NOT_KNOWN as lw_piece_fit_stretch, and for two pieces, which any two figures fit.
 */
lw_status lw_piece_fit_stretch_radius_error(const lw_piece_fit *fit,
                                            lw_length *radius_error);

/**
 * Interval of the share at a chance (Fieller's). One that holds 0 means that no stretch has been shown.
 *
 * Errors: LW_NOT_KNOWN as lw_piece_fit_stretch, for two pieces, and where the pieces say so little that it has no end;
 * LW_NOT_A_NUMBER, LW_OUT_OF_RANGE for the chance.
 */
lw_status lw_piece_fit_stretch_interval(const lw_piece_fit *fit,
                                        double chance,
                                        double *low,
                                        double *high);

/**
 * Frees a fit to test pieces. NULL is allowed.
 */
void lw_piece_fit_free(lw_piece_fit *fit);

/**
 * A nut by its thread ("M10x1", or "unknown"), length over all, bore, and nose ("coned", "flat", "sleeve" or
 * "unknown"). What is unknown stops the plan that needs it. Free it with lw_nut_free.
 *
 * Errors: LW_THREAD_AMBIGUOUS, LW_HEX_NOT_THREAD, LW_UNREADABLE, LW_UNKNOWN_NAME for the nose, LW_NOT_A_NUMBER,
 * LW_OUT_OF_RANGE.
 */
lw_status lw_nut_new(const char *thread,
                     lw_length length,
                     lw_length bore,
                     const char *nose,
                     lw_nut **nut);

/**
 * Records the hexagon of a nut across its flats. It says nothing about the thread.
 *
 * Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
 */
lw_status lw_nut_set_across_flats(lw_nut *nut, lw_length across_flats);

/**
 * Records the length of a nut's thread, from under its head toward the nose, and of the unthreaded lead in front of it:
 * 0 mm where the thread runs to the nose.
 *
 * Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE, also where both together are longer than the nut.
 */
lw_status lw_nut_set_thread_length(lw_nut *nut,
                                   lw_length thread_length,
                                   lw_length lead);

/**
 * The length of a nut's thread, and of the unthreaded lead in front of it.
 *
 * Errors: LW_NOT_KNOWN where they were not measured.
 */
lw_status lw_nut_thread_length(const lw_nut *nut, lw_length *thread_length, lw_length *lead);

/**
 * The hexagon across its corners, sharp ones: the real nut is no larger.
 *
 * Errors: LW_NOT_KNOWN where its flats were not measured.
 */
lw_status lw_nut_across_corners(const lw_nut *nut, lw_length *across_corners);

/**
 * The smallest centerline radius that a nut slides along on tube of diameter od: rigid geometry of a straight bore
 * over a round arc.
 *
 * Errors: LW_NOT_KNOWN where the nut does not pass the tube at all, LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
 */
lw_status lw_nut_tightest_curve(const lw_nut *nut,
                                lw_length od,
                                lw_length *radius);

/**
 * Frees a nut. NULL is allowed.
 */
void lw_nut_free(lw_nut *nut);

/**
 * An end by its nut and its flare: "double-45", "bubble" or "single-37". It has no port yet, which stops a plan.
 * Free it with lw_end_free.
 *
 * Errors: LW_SINGLE_45_REFUSED, LW_UNKNOWN_NAME for the flare.
 */
lw_status lw_end_new(const lw_nut *nut,
                     const char *flare,
                     lw_end **end);

/**
 * Records the port that an end is screwed into: what it is on, its thread ("M10x1", or "unknown") and its seat
 * ("inverted-45", "bubble", "cone-37" or "unknown"). Depths that were recorded before are forgotten.
 *
 * Errors: LW_THREAD_AMBIGUOUS, LW_HEX_NOT_THREAD, LW_UNREADABLE, LW_UNKNOWN_NAME for the seat.
 */
lw_status lw_end_set_port(lw_end *end,
                          const char *name,
                          const char *thread,
                          const char *seat);

/**
 * Records the depths of the port of an end, both from the face that the nut's head comes to: to the end of the full
 * thread, and to the middle of the seat, where the flare closes. Call it after lw_end_set_port.
 *
 * Errors: LW_FIELD_MISSING where no port is recorded, LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
 */
lw_status lw_end_set_port_depths(lw_end *end,
                                 lw_length thread,
                                 lw_length seat);

/**
 * The depths of the port of an end: to the end of its full thread, and to the middle of its seat.
 *
 * Errors: LW_NOT_KNOWN where no port is recorded or its depths were not measured.
 */
lw_status lw_end_port_depths(const lw_end *end, lw_length *thread, lw_length *seat);

/**
 * What is left of the nut's way when the flare is clamped, on a tube with this wall: between the nut's head and the
 * port's face, and of the port's full thread beyond the nut's first; and how much of the nut's thread is in the port's.
 * All three are the least, for the thinnest and the thickest flare of this wall; of bubbles up to 1.6 tubes wide, on tube up
 * to ten walls wide. Where one of the first two is not above what the depths can be off, the nut comes to its own end first: it feels tight
 * and clamps nothing.
 *
 * Errors: LW_NOT_KNOWN where no port is recorded or a length or depth was not measured, LW_NOT_A_NUMBER,
 * LW_OUT_OF_RANGE.
 */
lw_status lw_end_clamp_margin(const lw_end *end,
                              lw_length wall,
                              lw_length *under_head,
                              lw_length *beyond_thread,
                              lw_length *engaged);

/**
 * How many threads of this pitch show between the nut's head and the port's face when the flare is clamped, not
 * rounded; negative where the head comes to the face first. Two are usual, none is suspicious (common practice, no
 * source).
 *
 * Errors: as lw_end_clamp_margin.
 */
lw_status lw_end_threads_showing(const lw_end *end,
                                 lw_length wall,
                                 lw_length pitch,
                                 double *threads);

/**
 * Adds what goes onto the tube from this end before the nut; call it in that order. facing says which way round, and
 * is empty where that does not matter.
 */
lw_status lw_end_add_loaded(lw_end *end,
                            const char *name,
                            const char *facing);

/**
 * Adds a hole that this end goes through when the line is fitted.
 *
 * Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
 */
lw_status lw_end_add_hole(lw_end *end, lw_length diameter);

/**
 * Sets the diameter of a finished flare like that of this end, as measured on a test piece of its tube.
 *
 * Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
 */
lw_status lw_end_set_flare_diameter(lw_end *end, lw_length diameter);

/**
 * Says whether this end is flared on the vehicle, after it went through its holes: 1, or 0.
 */
lw_status lw_end_set_flared_in_place(lw_end *end, int32_t is_in_place);

/**
 * Frees an end. NULL is allowed.
 */
void lw_end_free(lw_end *end);

/**
 * A line from its parts. Free it with lw_line_free.
 */
lw_status lw_line_new(const char *name,
                      const lw_tube *tube,
                      const lw_path *path,
                      const lw_end *a,
                      const lw_end *b,
                      lw_line **line);

/**
 * Defers a line: its figures are computed, its cut is locked. waits_for says for what; an empty text ends the wait.
 */
lw_status lw_line_set_deferred(lw_line *line,
                               const char *waits_for);

/**
 * Frees a line. NULL is allowed.
 */
void lw_line_free(lw_line *line);

/**
 * A draft with nothing in it. Free it with lw_draft_free.
 */
lw_status lw_draft_new(lw_draft **draft);

/**
 * Fills a field with what was typed; it is not looked at before lw_draft_check.
 *
 * Errors: LW_UNKNOWN_NAME for the field.
 */
lw_status lw_draft_set(lw_draft *draft, const char *field, const char *typed);

/**
 * Checks every field and puts the line together. The status is LW_OK whatever was found: line receives the line, or
 * NULL where something was refused, and problems everything found, the worst first. Free them with lw_line_free and
 * lw_problems_free.
 */
lw_status lw_draft_check(const lw_draft *draft,
                         lw_line **line,
                         lw_problems **problems);

/**
 * lw_draft_check of a draft from a file whose way of writing numbers is known; notation may be NULL.
 *
 * Errors: LW_STRUCT_SIZE.
 */
lw_status lw_draft_check_in(const lw_draft *draft,
                            const lw_notation *notation,
                            lw_line **line,
                            lw_problems **problems);

/**
 * The number of fields that a draft has.
 */
lw_status lw_draft_field_count(size_t *count);

/**
 * The name of a field, the same in every language.
 */
lw_status lw_draft_field_name(size_t index, char *buf, size_t cap, size_t *need);

/**
 * What belongs in a field.
 */
lw_status lw_draft_field_meaning(size_t index, char *buf, size_t cap, size_t *need);

/**
 * Whether a line needs a field.
 */
lw_status lw_draft_field_is_needed(size_t index, int32_t *is_needed);

/**
 * Frees a draft. NULL is allowed.
 */
void lw_draft_free(lw_draft *draft);

/**
 * The number of findings.
 */
lw_status lw_problems_count(const lw_problems *problems, size_t *count);

/**
 * What was found: a number of enum lw_code.
 */
lw_status lw_problems_code(const lw_problems *problems, size_t index, int32_t *code);

/**
 * How grave: "refuse", "stop", "caution" or "note".
 */
lw_status lw_problems_level(const lw_problems *problems, size_t index, char *buf, size_t cap, size_t *need);

/**
 * Code and place, by which a person lifts it: "BENDS_TOO_CLOSE@bend 4". See lw_plan_options_accept.
 */
lw_status lw_problems_id(const lw_problems *problems, size_t index, char *buf, size_t cap, size_t *need);

/**
 * What it is about: "line", "field od", "end A", "straight 2", "bend 4", counted from 1 as on paper.
 */
lw_status lw_problems_part(const lw_problems *problems, size_t index, char *buf, size_t cap, size_t *need);

/**
 * Why it matters.
 */
lw_status lw_problems_why(const lw_problems *problems, size_t index, char *buf, size_t cap, size_t *need);

/**
 * How to mend it.
 */
lw_status lw_problems_fix(const lw_problems *problems, size_t index, char *buf, size_t cap, size_t *need);

/**
 * What was found, in words; empty where there is nothing to say.
 */
lw_status lw_problems_got_text(const lw_problems *problems,
                               size_t index,
                               char *buf,
                               size_t cap,
                               size_t *need);

/**
 * What is needed, in words; empty where there is nothing to say.
 */
lw_status lw_problems_need_text(const lw_problems *problems,
                                size_t index,
                                char *buf,
                                size_t cap,
                                size_t *need);

/**
 * What is found, as a length.
 *
 * Errors: LW_WRONG_KIND where it is something else; lw_problems_got_text has it in words.
 */
lw_status lw_problems_got_length(const lw_problems *problems, size_t index, lw_length *got);

/**
 * What is found, as an angle.
 *
 * Errors: LW_WRONG_KIND where it is something else; lw_problems_got_text has it in words.
 */
lw_status lw_problems_got_angle(const lw_problems *problems, size_t index, lw_angle *got);

/**
 * What is needed, as a length.
 *
 * Errors: LW_WRONG_KIND where it is something else; lw_problems_need_text has it in words.
 */
lw_status lw_problems_need_length(const lw_problems *problems, size_t index, lw_length *need);

/**
 * What is needed, as an angle.
 *
 * Errors: LW_WRONG_KIND where it is something else; lw_problems_need_text has it in words.
 */
lw_status lw_problems_need_angle(const lw_problems *problems, size_t index, lw_angle *need);

/**
 * The whole finding in one line: level, code, part, why, got, need, cure.
 */
lw_status lw_problems_text(const lw_problems *problems, size_t index, char *buf, size_t cap, size_t *need);

/**
 * Whether it holds a plan back: a refusal, or a stop that nobody has lifted.
 */
lw_status lw_problems_is_open(const lw_problems *problems, size_t index, int32_t *is_open);

/**
 * Who lifted it.
 *
 * Errors: LW_NOT_KNOWN where nobody did.
 */
lw_status lw_problems_lifted_by(const lw_problems *problems,
                                size_t index,
                                char *buf,
                                size_t cap,
                                size_t *need);

/**
 * Why it was lifted.
 *
 * Errors: LW_NOT_KNOWN where nobody lifted it.
 */
lw_status lw_problems_lifted_why(const lw_problems *problems,
                                 size_t index,
                                 char *buf,
                                 size_t cap,
                                 size_t *need);

/**
 * Frees a list of findings. NULL is allowed.
 */
void lw_problems_free(lw_problems *problems);

/**
 * Plans a line on a bench. What is wrong or missing is no error: the plan says so in its problems, and while a stop
 * is open it is a draft. options may be NULL. Free it with lw_plan_free.
 */
lw_status lw_plan_new(const lw_line *line,
                      const lw_bench *bench,
                      const lw_plan_options *options,
                      lw_plan **plan);

/**
 * Flare face to flare face along the center line.
 */
lw_status lw_plan_finished_length(const lw_plan *plan, lw_length *length);

/**
 * The end at which work starts: LW_A or LW_B.
 */
lw_status lw_plan_first(const lw_plan *plan, lw_side *side);

/**
 * The end that is left long, trimmed after the trial fit and flared last: LW_A or LW_B.
 *
 * Errors: LW_NOT_KNOWN where the plan has none.
 */
lw_status lw_plan_trim_end(const lw_plan *plan, lw_side *side);

/**
 * Where all marks are measured from: "flare A", "raw end A", "flare B" or "raw end B".
 */
lw_status lw_plan_datum(const lw_plan *plan, char *buf, size_t cap, size_t *need);

/**
 * Whether a stop is open.
 */
lw_status lw_plan_is_draft(const lw_plan *plan, int32_t *is_draft);

/**
 * Everything found, the worst first, as a list of its own. Free it with lw_problems_free.
 */
lw_status lw_plan_problems(const lw_plan *plan, lw_problems **problems);

/**
 * The number of defaults that the plan rests on.
 */
lw_status lw_plan_assumption_count(const lw_plan *plan, size_t *count);

/**
 * A default that the plan rests on: what, the value used, and why this value.
 */
lw_status lw_plan_assumption_text(const lw_plan *plan, size_t index, char *buf, size_t cap, size_t *need);

/**
 * The bench card, as lines of text for a fixed-width font.
 */
lw_status lw_plan_card(const lw_plan *plan, char *buf, size_t cap, size_t *need);

/**
 * Frees a plan. NULL is allowed.
 */
void lw_plan_free(lw_plan *plan);

/**
 * Options that decide nothing yet. Free them with lw_plan_options_free.
 */
lw_status lw_plan_options_new(lw_plan_options **options);

/**
 * Sets the end that is left long and finished last: LW_A or LW_B. Without it the longer end straight that can be
 * flared after bending is taken.
 *
 * Errors: LW_OUT_OF_RANGE for another number.
 */
lw_status lw_plan_options_set_trim_end(lw_plan_options *options,
                                       lw_side side);

/**
 * Sets tube to be added at the trim end, for instance for a second try at its flare.
 *
 * Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
 */
lw_status lw_plan_options_set_reserve(lw_plan_options *options, lw_length reserve);

/**
 * Lifts a stop by its id (see lw_problems_id), with the person who does it and the reason; both are printed. Whether a
 * person can lift it, the plan says.
 */
lw_status lw_plan_options_accept(lw_plan_options *options,
                                 const char *id,
                                 const char *who,
                                 const char *why);

/**
 * Frees options. NULL is allowed.
 */
void lw_plan_options_free(lw_plan_options *options);

/**
 * How long the tube is cut, not rounded: the sum of the terms.
 *
 * Errors: LW_NOT_KNOWN while what a flare takes of the tube is not known.
 */
lw_status lw_plan_cut_length(const lw_plan *plan, lw_length *length);

/**
 * The number of terms of the cut length; 0 while it is not known.
 */
lw_status lw_plan_cut_term_count(const lw_plan *plan, size_t *count);

/**
 * What a term of the cut length is, in words.
 */
lw_status lw_plan_cut_term_text(const lw_plan *plan, size_t index, char *buf, size_t cap, size_t *need);

/**
 * How much a term adds to the cut length.
 */
lw_status lw_plan_cut_term_length(const lw_plan *plan, size_t index, lw_length *length);

/**
 * The finished straight at an end.
 *
 * Errors: LW_OUT_OF_RANGE for a side that is not LW_A or LW_B.
 */
lw_status lw_plan_end_straight(const lw_plan *plan, lw_side side, lw_length *straight);

/**
 * When an end is flared: "before bending", "after bending", or "neither" where the straight has room for neither.
 *
 * Errors: LW_OUT_OF_RANGE for a side that is not LW_A or LW_B.
 */
lw_status lw_plan_end_order(const lw_plan *plan,
                            lw_side side,
                            char *buf,
                            size_t cap,
                            size_t *need);

/**
 * The straight that an end needs for one purpose, and how far it falls short of that: the smallest move of the bend
 * away from the end that cures it, 0 where nothing is short.
 *
 * Errors: LW_NOT_KNOWN while the bench lacks the flare tool, LW_OUT_OF_RANGE for a side or a kind that is none.
 */
lw_status lw_plan_end_minimum(const lw_plan *plan,
                              lw_side side,
                              lw_minimum kind,
                              lw_length *needed,
                              lw_length *shortfall);

/**
 * The number of terms that a minimum is the sum of; 0 while it is not known.
 *
 * Errors: LW_OUT_OF_RANGE for a side or a kind that is none.
 */
lw_status lw_plan_end_minimum_term_count(const lw_plan *plan, lw_side side, lw_minimum kind, size_t *count);

/**
 * What a term of a minimum is, in words.
 *
 * Errors: LW_OUT_OF_RANGE for a side or a kind that is none.
 */
lw_status lw_plan_end_minimum_term_text(const lw_plan *plan,
                                        lw_side side,
                                        lw_minimum kind,
                                        size_t index,
                                        char *buf,
                                        size_t cap,
                                        size_t *need);

/**
 * How much a term adds to a minimum; it may be negative.
 *
 * Errors: LW_OUT_OF_RANGE for a side or a kind that is none.
 */
lw_status lw_plan_end_minimum_term_length(const lw_plan *plan,
                                          lw_side side,
                                          lw_minimum kind,
                                          size_t index,
                                          lw_length *length);

/**
 * The number of bends. Their indices follow the path from A to B.
 */
lw_status lw_plan_bend_count(const lw_plan *plan, size_t *count);

/**
 * The number of a bend on paper: from 1 at end A.
 */
lw_status lw_plan_bend_number(const lw_plan *plan, size_t index, size_t *number);

/**
 * The angle of a bend that shall remain.
 */
lw_status lw_plan_bend_angle(const lw_plan *plan, size_t index, lw_angle *angle);

/**
 * The turn of the bend plane, in the direction of work, against the plane of the bend made before.
 *
 * Errors: LW_NOT_KNOWN for the bend made first, which has none.
 */
lw_status lw_plan_bend_rotation(const lw_plan *plan, size_t index, lw_angle *rotation);

/**
 * The radius of a bend, as formed.
 */
lw_status lw_plan_bend_radius(const lw_plan *plan, size_t index, lw_length *radius);

/**
 * Where the pen goes for a bend, from the datum of lw_plan_datum.
 *
 * Errors: LW_NOT_KNOWN while the datum is a raw end and its flare's shortening is not known.
 */
lw_status lw_plan_bend_mark(const lw_plan *plan, size_t index, lw_length *mark);

/**
 * The place of the mark from the raw end at which work starts.
 *
 * Errors: LW_NOT_KNOWN while the shortening of that end's flare is not known.
 */
lw_status lw_plan_bend_from_raw_end(const lw_plan *plan, size_t index, lw_length *from_raw_end);

/**
 * The place of the mark from the finished flare face at which work starts.
 */
lw_status lw_plan_bend_from_flare_face(const lw_plan *plan, size_t index, lw_length *from_flare_face);

/**
 * What the tool is bent to so that the wanted angle remains, not rounded.
 *
 * Errors: LW_NOT_KNOWN without a springback, and for a radius that is not that of the former.
 */
lw_status lw_plan_bend_setting(const lw_plan *plan, size_t index, lw_angle *setting);

/**
 * From the end of the bend made before it to the start of this one, for marking again after each bend; for the bend
 * made first it is the mark itself.
 *
 * Errors: LW_NOT_KNOWN where that mark is not known.
 */
lw_status lw_plan_bend_from_last_bend(const lw_plan *plan,
                                      size_t index,
                                      lw_length *from_last_bend);

/**
 * How a bend is made: "former", "hand" or "mandrel". Only a bend on the former has a setting.
 */
lw_status lw_plan_bend_making(const lw_plan *plan, size_t index, char *buf, size_t cap, size_t *need);

/**
 * The number of steps. Their indices follow the order of work.
 */
lw_status lw_plan_step_count(const lw_plan *plan, size_t *count);

/**
 * What a step is: "cut", "nut gate", "flare", "look gate", "mark", "bend", "trial fit", "trim" or "finish".
 */
lw_status lw_plan_step_kind(const lw_plan *plan, size_t index, char *buf, size_t cap, size_t *need);

/**
 * What to do, in words and rounded figures.
 */
lw_status lw_plan_step_text(const lw_plan *plan, size_t index, char *buf, size_t cap, size_t *need);

/**
 * Whether a step is a gate: to be confirmed before the next one.
 */
lw_status lw_plan_step_is_gate(const lw_plan *plan, size_t index, int32_t *is_gate);

/**
 * Whether an open stop holds a step back.
 */
lw_status lw_plan_step_is_locked(const lw_plan *plan, size_t index, int32_t *is_locked);

/**
 * The number of things to be loaded.
 */
lw_status lw_plan_loading_count(const lw_plan *plan, size_t *count);

/**
 * The end that a thing is loaded from: LW_A or LW_B.
 */
lw_status lw_plan_loading_side(const lw_plan *plan, size_t index, lw_side *side);

/**
 * What is loaded.
 */
lw_status lw_plan_loading_what(const lw_plan *plan, size_t index, char *buf, size_t cap, size_t *need);

/**
 * Which way round it goes on; empty where that does not matter.
 */
lw_status lw_plan_loading_facing(const lw_plan *plan, size_t index, char *buf, size_t cap, size_t *need);

/**
 * Whether the length forgives an error: an end can still be trimmed after the trial fit.
 */
lw_status lw_plan_is_forgiving(const lw_plan *plan, int32_t *is_forgiving);

/**
 * The number of checks, both of distances and of turns: one for each bend but the first made.
 */
lw_status lw_plan_check_count(const lw_plan *plan, size_t *count);

/**
 * The number, from 1 at end A, of the bend whose turn a check is about.
 */
lw_status lw_plan_check_bend(const lw_plan *plan, size_t index, size_t *number);

/**
 * Where the distance that shows this turn best begins: "end A" or "mark 2".
 */
lw_status lw_plan_tape_check_from(const lw_plan *plan, size_t index, char *buf, size_t cap, size_t *need);

/**
 * Where that distance ends.
 */
lw_status lw_plan_tape_check_to(const lw_plan *plan, size_t index, char *buf, size_t cap, size_t *need);

/**
 * That distance, straight across on the center line, and how much it changes at the least when the turn is 10 degrees
 * off. Where that is less than a tape shows, the turn must be checked by its angle.
 */
lw_status lw_plan_tape_check(const lw_plan *plan,
                             size_t index,
                             lw_length *distance,
                             lw_length *change);

/**
 * The turn in words where it is a whole quarter, as lw_turn_words.
 *
 * Errors: LW_NOT_KNOWN for other turns.
 */
lw_status lw_plan_turn_check_words(const lw_plan *plan, size_t index, char *buf, size_t cap, size_t *need);

/**
 * The turn on a clock, as lw_turn_clock.
 */
lw_status lw_plan_turn_check_clock(const lw_plan *plan, size_t index, char *buf, size_t cap, size_t *need);

/**
 * What an inclinometer reads, positive upward, for this turn; lw_plan_turn_check_text says on which leg.
 */
lw_status lw_plan_turn_check_reading(const lw_plan *plan, size_t index, lw_angle *reading);

/**
 * The check of a turn as a sentence: which legs are held level, which is read, and what it reads.
 */
lw_status lw_plan_turn_check_text(const lw_plan *plan, size_t index, char *buf, size_t cap, size_t *need);

/**
 * The look that tells the part from its mirror image, as a sentence.
 *
 * Errors: LW_NOT_KNOWN for a flat line, which has no hand.
 */
lw_status lw_plan_hand_check_text(const lw_plan *plan, char *buf, size_t cap, size_t *need);

/**
 * The leg that is looked at, and whether it points up (1) or down (0).
 *
 * Errors: LW_NOT_KNOWN for a flat line.
 */
lw_status lw_plan_hand_check(const lw_plan *plan, size_t *leg, int32_t *is_up);

/**
 * What it means that the leg points up (1) or down (0): a list with LW_HAND_MISMATCH for the mirror part, otherwise
 * empty. Free it with lw_problems_free.
 *
 * Errors: LW_NOT_KNOWN for a flat line.
 */
lw_status lw_plan_hand_check_judge(const lw_plan *plan,
                                   int32_t points_up,
                                   lw_problems **problems);

/**
 * Plans every one of n drafts on one bench; each row is what lw_draft_check and lw_plan_new give for it alone. options
 * may be NULL. Free it with lw_sized_free.
 */
lw_status lw_size_lines(const lw_draft *const *rows,
                        size_t n,
                        const lw_bench *bench,
                        const lw_plan_options *options,
                        lw_sized **sized);

/**
 * lw_size_lines of rows from a file whose way of writing numbers is known: a decimal comma in one row counts for all.
 * options and notation may be NULL. Free it with lw_sized_free.
 *
 * Errors: LW_STRUCT_SIZE.
 */
lw_status lw_size_lines_in(const lw_draft *const *rows,
                           size_t n,
                           const lw_bench *bench,
                           const lw_plan_options *options,
                           const lw_notation *notation,
                           lw_sized **sized);

/**
 * The number of rows.
 */
lw_status lw_sized_count(const lw_sized *sized, size_t *count);

/**
 * The name of a row's line, as typed.
 */
lw_status lw_sized_name(const lw_sized *sized, size_t index, char *buf, size_t cap, size_t *need);

/**
 * The plan of a row, as a plan of its own. Free it with lw_plan_free.
 *
 * Errors: LW_NOT_KNOWN where the row was refused; its problems say why.
 */
lw_status lw_sized_plan(const lw_sized *sized, size_t index, lw_plan **plan);

/**
 * Everything found in a row, the worst first, as a list of its own. Free it with lw_problems_free.
 */
lw_status lw_sized_problems(const lw_sized *sized, size_t index, lw_problems **problems);

/**
 * Frees the answer for many lines. NULL is allowed.
 */
void lw_sized_free(lw_sized *sized);

/**
 * The sum that makes a figure, line by line; the terms, rounded to 0.1 mm, add up to the figure shown. A figure is
 * "finished length", "cut length", "mark 2", "setting 3", "end A flare after", "end A flare before" or "end B
 * assembled".
 *
 * Errors: LW_UNKNOWN_NAME for the figure, LW_NOT_KNOWN where the plan does not know it.
 */
lw_status lw_plan_explain(const lw_plan *plan,
                          const char *figure,
                          char *buf,
                          size_t cap,
                          size_t *need);

/**
 * Only what changed from one plan to another; an empty list for equal plans. Free it with lw_changes_free.
 */
lw_status lw_plan_changes(const lw_plan *before, const lw_plan *after, lw_changes **changes);

/**
 * The number of changes.
 */
lw_status lw_changes_count(const lw_changes *changes, size_t *count);

/**
 * What changed.
 */
lw_status lw_changes_what(const lw_changes *changes, size_t index, char *buf, size_t cap, size_t *need);

/**
 * How it was.
 */
lw_status lw_changes_before(const lw_changes *changes, size_t index, char *buf, size_t cap, size_t *need);

/**
 * How it is.
 */
lw_status lw_changes_after(const lw_changes *changes, size_t index, char *buf, size_t cap, size_t *need);

/**
 * Frees a list of changes. NULL is allowed.
 */
void lw_changes_free(lw_changes *changes);

/**
 * The stations of the fewest clips that keep a rule: no further apart than spacing, the first and last no further from
 * the ends than from_end; distances along the center line from end A. stations has room for cap of them; need receives
 * their number. A clip may fall into a bend: ask lw_clip_problems as well.
 *
 * Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
 */
lw_status lw_clip_stations(const lw_path *path,
                           lw_length spacing,
                           lw_length from_end,
                           lw_length *stations,
                           size_t cap,
                           size_t *need);

/**
 * What is worth knowing about the clips that lw_clip_stations gives for the same rule: LW_CLIP_IN_BEND for each that
 * falls into a bend. Free it with lw_problems_free.
 *
 * Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
 */
lw_status lw_clip_problems(const lw_path *path,
                           lw_length spacing,
                           lw_length from_end,
                           lw_problems **problems);

/**
 * Clips to buy: those that are missing, and spares.
 */
lw_status lw_clips_to_buy(size_t needed, size_t reusable, size_t *buy, size_t *spares);

/**
 * The number of spacing rules that the library knows.
 */
lw_status lw_clip_rule_count(size_t *count);

/**
 * A spacing rule: the largest distance between clips and from an end. Local codes and the vehicle maker's data rule
 * over it.
 */
lw_status lw_clip_rule(size_t index,
                       lw_length *spacing,
                       lw_length *from_end);

/**
 * Where a spacing rule comes from, and how that was checked.
 */
lw_status lw_clip_rule_source(size_t index, char *buf, size_t cap, size_t *need);

/**
 * The cut length that is long enough with the chance asked for. bench may be NULL. Free it with lw_tape_cut_free.
 *
 * Errors: LW_STRUCT_SIZE, LW_METHOD_MISSING, LW_UNKNOWN_NAME, LW_UNIT_IMPLAUSIBLE where the bends alone take more than
 * the length, LW_FLARE_NET_UNKNOWN, LW_FLARE_TOOL_MISSING, LW_NO_CORNER, LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
 */
lw_status lw_tape_cut_new(const lw_tape *tape,
                          const lw_bench *bench,
                          lw_tape_cut **cut);

/**
 * The cut length, not rounded.
 */
lw_status lw_tape_cut_length(const lw_tape_cut *cut, lw_length *length);

/**
 * What to cut, in whole millimeters: rounded up.
 */
lw_status lw_tape_cut_rounded(const lw_tape_cut *cut, lw_length *length);

/**
 * Standard deviation of the measurement, by a model of our own that stands among the assumptions.
 */
lw_status lw_tape_cut_sigma(const lw_tape_cut *cut, lw_length *sigma);

/**
 * The chance of being long enough that was asked for, a plain ratio.
 */
lw_status lw_tape_cut_chance(const lw_tape_cut *cut, double *chance);

/**
 * Whether the least margin is larger than the one that the chance asks for; the true chance is then better.
 */
lw_status lw_tape_cut_floor_acts(const lw_tape_cut *cut, int32_t *floor_acts);

/**
 * The number of terms that the length is the sum of.
 */
lw_status lw_tape_cut_term_count(const lw_tape_cut *cut, size_t *count);

/**
 * What a term is.
 */
lw_status lw_tape_cut_term_text(const lw_tape_cut *cut, size_t index, char *buf, size_t cap, size_t *need);

/**
 * How much a term adds; it may be negative.
 */
lw_status lw_tape_cut_term_length(const lw_tape_cut *cut, size_t index, lw_length *length);

/**
 * The number of defaults that the length rests on.
 */
lw_status lw_tape_cut_assumption_count(const lw_tape_cut *cut, size_t *count);

/**
 * A default that the length rests on: what, the value used, and why this value.
 */
lw_status lw_tape_cut_assumption_text(const lw_tape_cut *cut,
                                      size_t index,
                                      char *buf,
                                      size_t cap,
                                      size_t *need);

/**
 * Frees a cut length. NULL is allowed.
 */
void lw_tape_cut_free(lw_tape_cut *cut);

/**
 * Tube in a bend, along the center line, in mm, of a radius as formed in mm and a bend angle in degrees. NaN on an
 * error.
 */
double lw_arc_mm(double radius_mm,
                 double angle_deg);

/**
 * From the corner to where the bend starts, in mm, of a radius as formed in mm and a bend angle in degrees. NaN on an
 * error.
 */
double lw_tangent_length_mm(double radius_mm,
                            double angle_deg);

/**
 * How much shorter the way round a bend is than the way over its corner, in mm, of a radius as formed in mm and a
 * bend angle in degrees. NaN on an error.
 */
double lw_gain_mm(double radius_mm,
                  double angle_deg);

/**
 * The angle in degrees to bend to so that the wanted angle in degrees remains, of a springback's constant part in
 * degrees and its proportional part (a plain ratio, such as 0.038). NaN on an error.
 */
double lw_setting_deg(double wanted_deg,
                      double constant_deg,
                      double proportional);

#ifdef __cplusplus
}  // extern "C"
#endif  // __cplusplus

#endif  /* LINEWRIGHT_H */
