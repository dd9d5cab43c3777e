// Edition 1 of the rules, closed. Made from the sources of its day; never made again, never changed.

import { isDeepStrictEqual } from "node:util";

// src/job/routine.ts
/** Answers that every item takes; else it is answered by the id of one of its choices. */
const DONE = "done";
const NOT_DONE = "not-done";
/** The items of one list. */
function itemsOf(routine, phase) {
	switch (phase) {
		case "before-removal": return routine.beforeRemoval;
		case "fitting": return routine.fitting;
		case "afterwards": return routine.afterwards;
	}
}

// src/job/state.ts
/** Nothing more is to be done about it. */
const isOver = (step) => step === "done" || step === "settled";

// src/job/phase.ts
/** The phases of a job in the order of the work, and which of them is at hand. */
const LISTS = /* @__PURE__ */ new Set([
	"before-removal",
	"fitting",
	"afterwards"
]);
const isList = (phase) => LISTS.has(phase);
const ORDER = [
	"windows",
	"before-removal",
	"old-plugs",
	"new-plugs",
	"gap",
	"fitting",
	"torque",
	"afterwards"
];
function belongs(phase, routine) {
	if (phase === "gap" || phase === "torque") return true;
	if (routine === null) return false;
	if (isList(phase)) return itemsOf(routine, phase).length > 0;
	if (phase === "windows") return routine.confirmWindows;
	return phase === "old-plugs" ? routine.oldPlugs : phase === "new-plugs" && routine.newPlugs;
}
function isDone(phase, state) {
	const every = (holds) => state.cylinders.every(({ cylinder }) => holds(cylinder));
	switch (phase) {
		case "windows": return state.windowsConfirmed;
		case "old-plugs": return state.oldPlugTarget === null;
		case "new-plugs": return every((cylinder) => state.newPlugs[cylinder]?.differs.length === 0);
		case "gap": return state.cylinders.every(({ gap }) => isOver(gap));
		case "torque": return state.cylinders.every(({ torque }) => isOver(torque));
		default: return isList(phase) && listDone(phase, state);
	}
}
const listDone = (phase, { routine, attested }) => routine === null || itemsOf(routine, phase).every(({ id }) => Object.hasOwn(attested, id));
/** The phases that this job has, in order, each with whether it is done; without signing. */
function phasesOf(state) {
	return ORDER.filter((phase) => belongs(phase, state.routine)).map((phase) => ({
		phase,
		done: isDone(phase, state)
	}));
}
/**
* The phase at hand: the first that is not done. Once a plug has been pulled on, hands are at the wrench: until every
* cylinder is over nothing else is put in front of them, and what was passed over comes back behind it.
*/
function phaseOf(state) {
	if (state.closed !== null) return "closed";
	const open = phasesOf(state).filter(({ done }) => !done);
	return state.cylinders.some(({ pulls }) => pulls.length > 0) && open.some(({ phase }) => phase === "gap" || phase === "torque") ? "torque" : open[0]?.phase ?? "sign";
}

// src/job/closing.ts
const TORQUE$1 = {
	todo: "no-torque",
	again: "torque-not-proven",
	ask: "torque-in-question"
};
const OPEN_PHASE = {
	windows: "windows-not-confirmed",
	"before-removal": "before-removal-not-attested",
	fitting: "fitting-not-attested",
	afterwards: "afterwards-not-attested"
};
const isListed = (phase) => Object.hasOwn(OPEN_PHASE, phase);
/** What is missing around the torque. */
function openPlugChecks({ routine, oldPlugs, newPlugs }, cylinder) {
	const items = [];
	const checked = newPlugs[cylinder];
	if (routine?.oldPlugs === true && (oldPlugs[cylinder]?.read ?? null) === null) items.push({
		kind: "old-plug-not-read",
		cylinder
	});
	if (routine?.newPlugs === true && checked === void 0) items.push({
		kind: "new-plug-not-checked",
		cylinder
	});
	if (checked !== void 0 && checked.differs.length > 0) items.push({
		kind: "new-plug-differs",
		cylinder,
		features: checked.differs
	});
	return items;
}
/** A plug that is to be replaced says why. */
function openGap(state, cylinder, gap) {
	if (isOver(gap)) return [];
	const step = state.plugs[cylinder]?.step;
	if (step?.do !== "replace") return [{
		kind: gap === "todo" ? "gap-not-measured" : "gap-not-proven",
		cylinder
	}];
	const { do: _do, ...replacement } = step;
	return [{
		kind: "plug-to-be-replaced",
		cylinder,
		...replacement
	}];
}
const openTorque = (cylinder, torque) => torque === "done" || torque === "settled" ? [] : [{
	kind: TORQUE$1[torque],
	cylinder
}];
/** What still stands between the job and its end; empty when every cylinder is over and nothing is left to say. */
function openItems(state) {
	return [
		...[...state.cylinders].sort((a, b) => a.cylinder - b.cylinder).flatMap(({ cylinder, gap, torque }) => [
			...openPlugChecks(state, cylinder),
			...openGap(state, cylinder, gap),
			...openTorque(cylinder, torque)
		]),
		...phasesOf(state).flatMap(({ phase, done }) => !done && isListed(phase) ? [{ kind: OPEN_PHASE[phase] }] : []),
		...state.questions.map(({ pull }) => ({
			kind: "question-not-answered",
			pull
		}))
	];
}

// src/reading.ts
/**
* Where a figure came from. `linked`: an instrument sent it over its link. `typed`: it came as typed text; a gauge that types
* as a keyboard does cannot be told from a person who types. `replayed`: a recording was played, of whatever it was made.
* `simulated`: there was no instrument.
*/
const FIGURE_SOURCES = [
	"linked",
	"typed",
	"replayed",
	"simulated"
];
/** Each source once, in the order of the list above. */
function sourcesOf(sources) {
	const there = new Set(sources);
	return FIGURE_SOURCES.filter((source) => there.has(source));
}
/** The correctly rounded double of `counts · 10^exponent`. */
function scaled(counts, exponent) {
	return exponent < 0 ? counts / 10 ** -exponent : counts * 10 ** exponent;
}

// src/job/fold-answer.ts
/**
* The state after a person answered the question that a pull raised; the steps are worked out anew behind it. `fresh`,
* `rehit`, `handling` and `unfinished` only note the answer: a placement of the same pull follows and says what became
* of it. A plug that is backed out takes with it whatever was asked about it and whatever was pulled since.
*/
function answered(state, pull, answer) {
	const question = state.questions.find((open) => open.pull === pull);
	if (question === void 0) throw new Error(`no question is open about pull ${pull}`);
	const backedOut = answer === "refit" || answer === "replace";
	const answers = (open) => open === question || backedOut && open.cylinder === question.cylinder;
	const pulls = new Set(state.questions.filter(answers).map((open) => open.pull));
	const concerns = (cylinder, number) => pulls.has(number) || backedOut && cylinder === question.cylinder && number > pull;
	const noted = ({ cylinder, pulls: list }) => list.map((attempt) => concerns(cylinder, attempt.pull.pull) ? {
		...attempt,
		answer
	} : attempt);
	const settled = {
		...state,
		questions: state.questions.filter((open) => !answers(open)),
		cylinders: state.cylinders.map((c) => ({
			...c,
			pulls: noted(c)
		}))
	};
	if (!backedOut) return settled;
	return {
		...settled,
		refitting: question.cylinder,
		cylinders: settled.cylinders.map((c) => c.cylinder === question.cylinder && answer === "replace" ? {
			...c,
			gap: "again"
		} : c)
	};
}

// src/job/fold-checklist.ts
const UNREAD = {
	read: null,
	gap: null,
	removal: null
};
const isChecklistEvent = (event) => CHECKLIST_EVENTS.has(event.type);
const CHECKLIST_EVENTS = /* @__PURE__ */ new Set([
	"windows-confirmed",
	"steps-attested",
	"old-plugs-read",
	"old-gap-measured",
	"removal-felt",
	"new-plugs-checked"
]);
/** The state after one such event. */
function foldChecklist(state, event) {
	switch (event.type) {
		case "windows-confirmed": return {
			...state,
			windowsConfirmed: true
		};
		case "steps-attested": {
			const entries = event.steps.map(({ item, ...attested }) => [item, attested]);
			return {
				...state,
				attested: {
					...state.attested,
					...Object.fromEntries(entries)
				}
			};
		}
		case "old-plugs-read": {
			const { type: _type, cylinders, ...read } = event;
			const after = cylinders.reduce((so, cylinder) => withOldPlug(so, cylinder, { read }), state);
			return {
				...after,
				chosen: {
					...after.chosen,
					"old-plug": null
				}
			};
		}
		case "old-gap-measured": return withOldPlug(state, event.cylinder, { gap: {
			gapMm: event.gapMm,
			source: event.source
		} });
		case "removal-felt": return withOldPlug(state, event.cylinder, { removal: event.pull });
		case "new-plugs-checked": {
			const { type: _type, cylinders, ...checked } = event;
			const each = cylinders.map((cylinder) => [cylinder, checked]);
			return {
				...state,
				newPlugs: {
					...state.newPlugs,
					...Object.fromEntries(each)
				}
			};
		}
	}
}
function withOldPlug(state, cylinder, change) {
	const was = state.oldPlugs[cylinder] ?? UNREAD;
	return {
		...state,
		oldPlugs: {
			...state.oldPlugs,
			[cylinder]: {
				...was,
				...change
			}
		}
	};
}
/** The old plug that a reading is of: none once new ones are being tightened. */
const oldPlugAtHand = ({ oldPlugTarget, cylinders }) => cylinders.some(({ pulls }) => pulls.length > 0) ? null : oldPlugTarget;
/** The cylinder whose old plug is read next: the chosen one, else the first unread; null where none is to be read. */
function oldPlugDue(state) {
	if (state.routine?.oldPlugs !== true) return null;
	const unread = state.cylinders.filter(({ cylinder }) => (state.oldPlugs[cylinder]?.read ?? null) === null);
	if (unread.length === 0) return null;
	return state.chosen["old-plug"] ?? unread[0]?.cylinder ?? null;
}

// src/job/question.ts
/** What has to be asked about a pull that was given to a cylinder; null for nothing. */
function questionFor(attempt, cylinder) {
	const { pull, judgement } = attempt;
	if (attempt.kind === "unsure") {
		const kind = attempt.ask !== void 0 && isOwn(attempt.ask) ? attempt.ask : "unsure";
		return {
			pull: pull.pull,
			cylinder,
			kind,
			answers: ANSWERS[kind]
		};
	}
	if (judgement?.side !== "high" || attempt.answer !== null) return null;
	return {
		pull: pull.pull,
		cylinder,
		kind: "over-window",
		answers: AGAIN
	};
}
const AGAIN = ["refit", "replace"];
/** What may be answered to each question about a pull of which nobody knows what it was. */
const ANSWERS = {
	loosened: [...AGAIN, "handling"],
	cut: [...AGAIN, "handling"],
	"end-of-scale": AGAIN,
	"already-tight": [
		"rehit",
		"handling",
		...AGAIN
	],
	"other-plug": [
		"fresh",
		"unfinished",
		"handling",
		...AGAIN
	],
	"no-click": [
		"fresh",
		"unfinished",
		...AGAIN
	],
	loose: [
		"fresh",
		"rehit",
		"handling",
		...AGAIN
	],
	unsure: [
		"fresh",
		"rehit",
		"handling"
	]
};
const isOwn = (ask) => Object.hasOwn(ANSWERS, ask);

// src/job/tightening-stage.ts
/** `loosen` stands between the first torque, once it is proven, and the last one. */
function stageAfter(stage, { kind, judgement, answer }) {
	if (answer === "refit" || answer === "replace") return "first";
	if (kind === "loosening") return stage === "loosen" ? "final" : stage;
	return stage === "first" && (kind === "tightening" || kind === "continuation") && judgement?.result === "OK" ? "loosen" : stage;
}

// src/quantity/angle.ts
/** Degrees in one of each unit. */
const DEGREES_IN = {
	deg: 1,
	circ: 360
};
/** An angle in `unit`, in degrees. */
function degrees(figure, unit) {
	return figure * DEGREES_IN[unit];
}

// src/quantity/length.ts
/** Millimetres in one of each unit; exact by definition. */
const MILLIMETRES_IN = {
	mm: 1,
	"[in_i]": 25.4,
	"[mil_i]": .0254
};
/** A length in `unit`, in mm. */
function millimetres(figure, unit) {
	return figure * MILLIMETRES_IN[unit];
}
/** `0.75 mm`. */
function formatGap(mm, decimals = 2) {
	return `${mm.toFixed(decimals)} mm`;
}

// src/quantity/torque.ts
/** Pound-force: 0.453 592 37 kg (pound) times 9.806 65 m/s² (standard gravity), both exact by definition. */
const POUND_FORCE_N = 4.4482216152605;
const STANDARD_GRAVITY = 9.80665;
/** Newton metres in one of each unit; exact by definition (inch 25.4 mm, foot 12 in), rounded only to a double. */
const NEWTON_METRES_IN = {
	"N.m": 1,
	"[ft_i].[lbf_av]": POUND_FORCE_N * .3048,
	"[in_i].[lbf_av]": POUND_FORCE_N * .0254,
	"kgf.m": STANDARD_GRAVITY,
	"kgf.cm": STANDARD_GRAVITY / 100
};
/** A torque in `unit`, in N·m. */
function newtonMetres(figure, unit) {
	return figure * NEWTON_METRES_IN[unit];
}
/** A torque in N·m, in `unit`. */
function fromNewtonMetres(nm, unit) {
	return nm / NEWTON_METRES_IN[unit];
}
/** `25.00 N·m`. */
function formatTorque(nm, decimals = 2) {
	return `${nm.toFixed(decimals)} N·m`;
}

// src/quantity/compare.ts
/**
* Relative difference below which two figures are the same figure. A conversion there and back moves a double by a few
* parts in 10^16 and no instrument resolves one part in 10^12, so this can undo rounding and can decide nothing else.
*/
const BINARY_ROUNDING = 1e-12;
/** -1, 0 or 1 as `a` lies below, on or above `b`, the noise of binary arithmetic counting as equal. */
function order(a, b) {
	if (Math.abs(a - b) <= BINARY_ROUNDING * Math.max(Math.abs(a), Math.abs(b))) return 0;
	return a < b ? -1 : 1;
}
function position(figure, range) {
	if (order(figure, range.lower) < 0) return "low";
	return order(figure, range.upper) > 0 ? "high" : "inside";
}
/** A torque in N·m held against a printed range, in the unit of the range: 30 lbf·ft lies within `25-30 lbf·ft`. */
function compareTorque(nm, range) {
	return position(fromNewtonMetres(nm, range.unit), range);
}
/** The limits of a printed torque range in N·m. */
function limitsNm(range) {
	return {
		lowerNm: newtonMetres(range.lower, range.unit),
		upperNm: newtonMetres(range.upper, range.unit)
	};
}
/** The limits of a printed range of lengths in mm. */
function limitsMm(range) {
	return {
		lowerMm: millimetres(range.lower, range.unit),
		upperMm: millimetres(range.upper, range.unit)
	};
}
/** The limits of an advised angle in degrees. */
function limitsDeg(range) {
	return {
		lowerDeg: degrees(range.lower, range.unit),
		upperDeg: degrees(range.upper, range.unit)
	};
}

// src/metrology/coverage.ts
/** What U covers: the share of the normal distribution within 2u, 95 % as laboratories state it (EA-4/02, GUM 6.3.3). */
const COVERAGE = .9544997361036416;

// src/metrology/normal.ts
const SQRT_2PI = Math.sqrt(2 * Math.PI);
/** Above this the series loses figures to cancellation, and the continued fraction converges quickly. */
const TAIL = 2;
/** Density of the standard normal distribution. */
function normalDensity(z) {
	return Math.exp(-z * z / 2) / SQRT_2PI;
}
/**
* Φ(z), the standard normal distribution function; relative error below 1e-13 down to z = -37 (there Φ is 5e-300).
* Power series in the middle, Laplace's continued fraction for Mills' ratio in the tails (Abramowitz and Stegun,
* 26.2.11 and 26.2.14).
*/
function normalCdf(z) {
	if (Number.isNaN(z)) return NaN;
	if (z < -2) return upperTail(-z);
	if (z > TAIL) return 1 - upperTail(z);
	return .5 + normalDensity(z) * oddSeries(z);
}
/** Probability that a standard normal variable lies between `from` and `to`, without loss of figures in either tail. */
function normalBetween(from, to) {
	return from > 0 ? normalCdf(-from) - normalCdf(-to) : normalCdf(to) - normalCdf(from);
}
/** z with Φ(z) = p, for 0 < p < 1; -Infinity and Infinity at the ends. */
function normalQuantile(p) {
	if (!(p >= 0 && p <= 1)) throw new RangeError(`a probability lies between 0 and 1, not ${p}`);
	if (p === 0 || p === 1) return p === 0 ? Number.NEGATIVE_INFINITY : Number.POSITIVE_INFINITY;
	if (p > .5) return -normalQuantile(1 - p);
	let z = -roughQuantile(p);
	for (let step = 0; step < 3; step += 1) {
		const off = (normalCdf(z) - p) / normalDensity(z);
		z -= off / (1 + z * off / 2);
	}
	return z;
}
/** Σ z^(2n+1) / (1·3·5···(2n+1)). */
function oddSeries(z) {
	let term = z;
	let sum = z;
	for (let n = 3; Math.abs(term) > 1e-18; n += 2) {
		term *= z * z / n;
		sum += term;
	}
	return sum;
}
/** 1 - Φ(z) for z > 0: φ(z) / (z + 1/(z + 2/(z + 3/(z + …)))), evaluated from the inside. */
function upperTail(z) {
	const density = normalDensity(z);
	if (density === 0) return 0;
	let fraction = z;
	for (let n = 160; n >= 1; n -= 1) fraction = z + n / fraction;
	return density / fraction;
}
/** Abramowitz and Stegun 26.2.23, for p up to one half. */
function roughQuantile(p) {
	const t = Math.sqrt(-2 * Math.log(p));
	return t - (2.515517 + t * (.802853 + t * .010328)) / (1 + t * (1.432788 + t * (.189269 + t * .001308)));
}

// src/metrology/window.ts
/**
* Says whether a reading proves conformity: limits and uncertainty make a window, a window and a reading a judgement.
* The rest of this folder says where the uncertainty comes from (budget, term, terms) and what a rule risks (decision, risk).
*/
/**
* The acceptance zone that the uncertainty leaves within the limits: guard band w = r·U at each limit (JCGM 106:2012,
* clause 8.3; ILAC-G8:09/2019). Not decidable when the guard bands meet. A wrong limit or uncertainty throws RangeError.
*/
function windowOf(input) {
	const { unit, lowerLimit, upperLimit, guardBandFactor } = input;
	const expandedAtLower = input.expandedAt(lowerLimit);
	const expandedAtUpper = input.expandedAt(upperLimit);
	if (!(Number.isFinite(lowerLimit) && Number.isFinite(upperLimit) && lowerLimit < upperLimit)) throw new RangeError(`limits ${lowerLimit} and ${upperLimit} do not enclose anything`);
	if (!(guardBandFactor >= 0)) throw new RangeError(`guard band factor ${guardBandFactor} is below zero`);
	mustBeUncertainty(expandedAtLower);
	mustBeUncertainty(expandedAtUpper);
	const acceptLower = lowerLimit + guardBandFactor * expandedAtLower;
	const acceptUpper = upperLimit - guardBandFactor * expandedAtUpper;
	return {
		unit,
		lowerLimit,
		upperLimit,
		guardBandFactor,
		expandedAtLower,
		expandedAtUpper,
		acceptLower,
		acceptUpper,
		decidable: order(acceptLower, acceptUpper) < 0
	};
}
/**
* Holds a reading (in the unit of the window) against a window. Grades of the non-binary statement with guard band of
* ILAC-G8:09/2019: `pass` within the acceptance zone, `conditional-pass` up to the limit, `conditional-fail` up to one
* guard band beyond it, `fail` further out; both conditional grades are `NotDecidable`. Never OK where the window is not
* decidable. `expandedUncertainty` is that of the reading (k = 2). A reading that is no number throws RangeError.
*/
function judge(value, expandedUncertainty, window) {
	if (!Number.isFinite(value)) throw new RangeError(`a reading must be a number, not ${value}`);
	mustBeUncertainty(expandedUncertainty);
	const grade = gradeOf(value, window);
	return {
		result: RESULT_OF[grade],
		side: sideOf(value, window),
		grade,
		value,
		expandedUncertainty,
		conformanceProbability: conformanceProbability(value, expandedUncertainty / 2, window)
	};
}
/**
* Probability that the true value lies within the limits, given a reading with standard uncertainty `standard` and no
* other knowledge (JCGM 106:2012, clause 7.4: normal distribution about the reading, both tails counted).
*/
function conformanceProbability(value, standard, { lowerLimit, upperLimit }) {
	const inside = normalBetween((lowerLimit - value) / standard, (upperLimit - value) / standard);
	return Math.min(1, Math.max(0, inside));
}
const RESULT_OF = {
	pass: "OK",
	"conditional-pass": "NotDecidable",
	"conditional-fail": "NotDecidable",
	fail: "NotOK"
};
function gradeOf(value, window) {
	const { lowerLimit, upperLimit, acceptLower, acceptUpper } = window;
	if (window.decidable && order(value, acceptLower) >= 0 && order(value, acceptUpper) <= 0) return "pass";
	if (order(value, lowerLimit) >= 0 && order(value, upperLimit) <= 0) return "conditional-pass";
	const failLower = lowerLimit - (acceptLower - lowerLimit);
	const failUpper = upperLimit + (upperLimit - acceptUpper);
	return order(value, failLower) >= 0 && order(value, failUpper) <= 0 ? "conditional-fail" : "fail";
}
/** An empty acceptance zone counts as the point at its middle, so that the side still tells which way to go. */
function sideOf(value, { acceptLower, acceptUpper, decidable }) {
	const middle = (acceptLower + acceptUpper) / 2;
	if (order(value, decidable ? acceptLower : middle) < 0) return "low";
	return order(value, decidable ? acceptUpper : middle) > 0 ? "high" : "inside";
}
function mustBeUncertainty(expanded) {
	if (!(Number.isFinite(expanded) && expanded > 0)) throw new RangeError(`an uncertainty is above zero, not ${expanded}`);
}

// src/metrology/decision.ts
const ISO_14253_1_FACTOR = 1.65;
/** The readings that prove conformity under a rule, with the same standard uncertainty throughout; null if there are none. */
function acceptanceZone(rule, limits, standard) {
	const guard = rule.kind === "probability" ? probabilityGuard(rule.atLeast, limits, standard) : (guardBandFactor(rule) ?? 0) * 2 * standard;
	if (guard === null) return null;
	const zone = {
		lower: limits.lowerLimit + guard,
		upper: limits.upperLimit - guard
	};
	return zone.lower < zone.upper ? zone : null;
}
/** The factor r of a guard band r·U that a rule comes to; null where it depends on the probability. */
function guardBandFactor(rule) {
	switch (rule.kind) {
		case "simple": return 0;
		case "iso-14253-1": return ISO_14253_1_FACTOR / 2;
		case "guard-band": return rule.r;
		case "probability": return null;
	}
}
/**
* The window that a rule leaves within the limits, each side by the uncertainty there; `guardBandFactor` is then the wider
* of the two guard bands over U. A wrong limit or uncertainty throws RangeError.
*/
function windowBy(rule, input) {
	const factor = guardBandFactor(rule);
	if (factor !== null) return windowOf({
		...input,
		guardBandFactor: factor
	});
	const bare = windowOf({
		...input,
		guardBandFactor: 0
	});
	const { lowerLimit, upperLimit, expandedAtLower, expandedAtUpper } = bare;
	const middle = (lowerLimit + upperLimit) / 2;
	const lower = acceptanceZone(rule, bare, expandedAtLower / 2);
	const upper = acceptanceZone(rule, bare, expandedAtUpper / 2);
	const [acceptLower, acceptUpper] = lower === null || upper === null ? [middle, middle] : [lower.lower, upper.upper];
	return {
		...bare,
		guardBandFactor: Math.max((acceptLower - lowerLimit) / expandedAtLower, (upperLimit - acceptUpper) / expandedAtUpper),
		acceptLower,
		acceptUpper,
		decidable: order(acceptLower, acceptUpper) < 0
	};
}
/** The expanded uncertainty (k = 2) below which a rule leaves any acceptance zone; Infinity where it always does. */
function largestExpandedBy(rule, limits) {
	const factor = guardBandFactor(rule);
	if (factor !== null || rule.kind !== "probability") return largestExpanded(limits, factor ?? 0);
	const halfWidth = (limits.upperLimit - limits.lowerLimit) / 2;
	return 2 * halfWidth / normalQuantile((1 + rule.atLeast) / 2);
}
/** The expanded uncertainty (k = 2) below which a window with guard bands r·U can be decided at all. */
function largestExpanded({ lowerLimit, upperLimit }, r) {
	return (upperLimit - lowerLimit) / (2 * r);
}
/** Bisection from a limit to the middle: the conformance probability rises all the way. Negative below one half. */
function probabilityGuard(atLeast, limits, standard) {
	const at = (guard) => conformanceProbability(limits.upperLimit - guard, standard, limits);
	let enough = (limits.upperLimit - limits.lowerLimit) / 2;
	if (at(enough) < atLeast) return null;
	let tooLittle = -enough;
	while (at(tooLittle) >= atLeast) tooLittle *= 2;
	for (let step = 0; step < 200 && Math.abs(enough - tooLittle) > 0; step += 1) {
		const middle = (enough + tooLittle) / 2;
		if (middle === enough || middle === tooLittle) break;
		if (at(middle) >= atLeast) enough = middle;
		else tooLittle = middle;
	}
	return enough;
}

// src/metrology/calibration.ts
/**
* The certificate at `reading`: the error on the straight line between the two neighbouring points, the uncertainty the
* larger of theirs, because what the line misses between them is not known. Beyond the last point its relative error and
* uncertainty are carried on, and that is stated; whether that may be used is decided elsewhere. No points throw
* RangeError.
*/
function calibratedAt(points, reading) {
	const sorted = [...points].sort((a, b) => a.reading - b.reading);
	const above = sorted.find((point) => point.reading >= reading);
	const below = sorted.findLast((point) => point.reading <= reading);
	const nearest = above ?? below;
	if (nearest === void 0) throw new RangeError("a certificate without points");
	if (above === void 0 || below === void 0) {
		const share = reading > nearest.reading && nearest.reading > 0 ? reading / nearest.reading : 1;
		return {
			error: share * nearest.error,
			standard: share * nearest.expanded / nearest.k,
			extrapolated: true
		};
	}
	const share = above.reading === below.reading ? 0 : (reading - below.reading) / (above.reading - below.reading);
	return {
		error: below.error + share * (above.error - below.error),
		standard: Math.max(below.expanded / below.k, above.expanded / above.k),
		extrapolated: false
	};
}

// src/metrology/permissible.ts
/** Half-width of a permissible deviation at a reading, in the unit of the reading. */
function permissibleAt(permissible, value) {
	return permissible.kind === "relative" ? permissible.percent / 100 * Math.abs(value) : permissible.amount;
}

// src/metrology/terms.ts
/** What the maker promises: anywhere within ±a, so rectangular. A relative promise is a share of the reading. */
function permissibleTerm(permissible, value, source) {
	return typeB("permissible-deviation", source, permissibleAt(permissible, value), { kind: "rectangular" });
}
/** A digital step: half a step to either side, rectangular, so step/√12 (GUM F.2.2.1). */
function resolutionTerm(step) {
	return typeB("resolution", { kind: "step" }, step / 2, { kind: "rectangular" });
}
/** What the laboratory leaves open about the error that its certificate states. */
function calibrationTerm({ standard, extrapolated }, source) {
	return typeB(extrapolated ? "calibration-extrapolated" : "calibration", source, standard, { kind: "standard" });
}
/** Drift since the last calibration: anywhere within ±`halfWidth`, from the history of certificates or a data sheet. */
function driftTerm(halfWidth, source) {
	return typeB("drift", source, halfWidth, { kind: "rectangular" });
}
/**
* An error that the certificate states and nobody takes off: as if its size were a standard deviation, which covers 95 %
* whatever its share (the root-sum-of-squares way with an uncorrected bias, S. D. Phillips et al., NIST, 1997).
*/
function uncorrectedTerm(error, source) {
	return typeB("uncorrected-error", source, Math.abs(error), { kind: "standard" });
}
/**
* Repeatability from at least two readings of the same thing (GUM 4.2): the standard deviation of one reading.
*/
function repeatabilityTerm(readings, basis) {
	const count = readings.length;
	if (count < 2) throw new RangeError(`repeatability needs at least 2 readings, not ${count}`);
	const mean = readings.reduce((sum, reading) => sum + reading, 0) / count;
	const variance = readings.reduce((sum, reading) => sum + (reading - mean) ** 2, 0) / (count - 1);
	return {
		cause: "repeatability",
		source: {
			kind: "own-readings",
			count,
			basis
		},
		type: "A",
		amount: Math.sqrt(variance),
		distribution: { kind: "standard" },
		sensitivity: 1,
		degreesOfFreedom: count - 1
	};
}
/** What sampling, noise and zero leave open about the peak of this very pull; a standard deviation from its own samples. */
function peakTerm(standard) {
	return typeB("peak", { kind: "samples" }, standard, { kind: "standard" });
}
/**
* What is not known of an adapter's geometry, for a wrench that reads `settingNm`: derivatives of
* setting·(L + E·cos θ)/L with half-widths `within`. First order: at 0° the angle drops out.
*/
function adapterTerms(adapter, within, settingNm) {
	const { armMm, offsetMm, angleDeg } = adapter;
	const angle = angleDeg * Math.PI / 180;
	const perMm = settingNm * Math.cos(angle) / armMm;
	const perDeg = -settingNm * offsetMm * Math.sin(angle) * Math.PI / 180 / armMm;
	const term = (cause, amount, sensitivity) => ({
		...typeB(cause, { kind: "adapter" }, amount, { kind: "rectangular" }),
		sensitivity
	});
	return [
		term("adapter-arm", within.armMm, -perMm * offsetMm / armMm),
		term("adapter-offset", within.offsetMm, perMm),
		term("adapter-angle", within.angleDeg, perDeg)
	];
}
function typeB(cause, source, amount, distribution) {
	return {
		cause,
		source,
		type: "B",
		amount,
		distribution,
		sensitivity: 1,
		degreesOfFreedom: Number.POSITIVE_INFINITY
	};
}

// src/instrument/dates.ts
/** Calendar arithmetic on ISO dates (`2026-11-25`), which compare as text. No clock: today comes in as an argument. */
const DAY_MS = 864e5;
const DAYS_IN_YEAR = 365.25;
/** The same day of the month `months` later, or the last one of a shorter month. */
function monthsLater(date, months) {
	const day = /* @__PURE__ */ new Date(`${date}T00:00:00Z`);
	const target = new Date(Date.UTC(day.getUTCFullYear(), day.getUTCMonth() + months + 1, 0));
	target.setUTCDate(Math.min(day.getUTCDate(), target.getUTCDate()));
	return target.toISOString().slice(0, 10);
}
/** Years from one date to a later one. */
function yearsBetween(from, to) {
	return (Date.parse(to) - Date.parse(from)) / DAY_MS / DAYS_IN_YEAR;
}

// src/instrument/uncertainty.ts
/**
* The lines of the budget that come from the instrument itself: its certificate, or the limits of its class where there is
* none; step, repeatability, drift since the calibration, and what the pull says of its own peak. `on` is the day of the job.
*/
function instrumentTerms(instrument, reading, on, peakStandard) {
	const { certificate, permissibleDeviation, resolution, repeatability, driftPerYear, basis } = instrument;
	const promise = instrument.promiseOfDevice === true ? { kind: "device" } : fromStationFile(basis);
	const terms = [];
	let correction = 0;
	if (certificate !== void 0) {
		const { number, laboratory } = certificate;
		const source = {
			kind: "certificate",
			number,
			laboratory
		};
		const calibrated = calibratedAt(certificate.points, reading);
		const { error } = calibrated;
		terms.push(calibrationTerm(calibrated, source));
		if (instrument.correct === true) correction = error;
		else if (error !== 0) terms.push(uncorrectedTerm(error, source));
		const years = Math.max(0, yearsBetween(certificate.date, on));
		if (driftPerYear !== void 0 && years > 0) terms.push(driftTerm(years * permissibleAt(driftPerYear.within, reading), fromStationFile(driftPerYear.basis)));
	} else if (permissibleDeviation !== void 0) terms.push(permissibleTerm(permissibleDeviation, reading, promise));
	else throw new RangeError(`nothing says how far ${instrument.id} may be off`);
	terms.push(resolutionTerm(resolution));
	if (repeatability !== void 0) terms.push(repeatabilityTerm(repeatability.readings, repeatability.basis));
	if (peakStandard !== null && peakStandard > 0) terms.push(peakTerm(peakStandard));
	return {
		correction,
		terms
	};
}
const fromStationFile = (basis) => ({
	kind: "station-file",
	basis
});

// src/metrology/beta.ts
/** The continued fraction of Abramowitz and Stegun 26.5.8 by Lentz's method. */
function betaFraction(x, a, b) {
	const floor = 1e-300;
	const keep = (value) => Math.abs(value) < floor ? floor : value;
	let c = 1;
	let d = 1 / keep(1 - (a + b) * x / (a + 1));
	let product = d;
	for (let m = 1; m < 1e5; m += 1) {
		const even = m * (b - m) * x / ((a + 2 * m - 1) * (a + 2 * m));
		const odd = -(a + m) * (a + b + m) * x / ((a + 2 * m) * (a + 2 * m + 1));
		let change = 1;
		for (const step of [even, odd]) {
			d = 1 / keep(1 + step * d);
			c = keep(1 + step / c);
			change = c * d;
			product *= change;
		}
		if (Math.abs(change - 1) < 1e-16) break;
	}
	return product;
}

// src/metrology/student.ts
const SQRT_PI = Math.sqrt(Math.PI);
/** Beyond this many degrees of freedom a normal variable that is scaled a little does better than the beta function. */
const ALL_BUT_NORMAL = 1e6;
/**
* Distribution function of Student's t with `degreesOfFreedom` (any positive number, Infinity for the normal one); absolute error below
* 1e-12. By the incomplete beta function: Abramowitz and Stegun 26.7.1 and 26.5.8, 26.7.8 for very many.
*/
function studentCdf(t, degreesOfFreedom) {
	if (!(degreesOfFreedom > 0)) throw new RangeError(`degrees of freedom must be above zero, not ${degreesOfFreedom}`);
	if (degreesOfFreedom > ALL_BUT_NORMAL) return normalCdf(t * (1 - 1 / (4 * degreesOfFreedom)) / Math.sqrt(1 + t * t / (2 * degreesOfFreedom)));
	if (t === 0) return .5;
	const oneTail = bothTails(t * t, degreesOfFreedom) / 2;
	return t > 0 ? 1 - oneTail : oneTail;
}
/** t with studentCdf(t) = p, for 0 < p < 1: bisection in a bracket that doubles until it holds the answer. */
function studentQuantile(p, degreesOfFreedom) {
	if (!(p > 0 && p < 1)) throw new RangeError(`a probability lies between 0 and 1, not ${p}`);
	if (p > .5) return -studentQuantile(1 - p, degreesOfFreedom);
	if (p === .5) return 0;
	let low = -1;
	while (studentCdf(low, degreesOfFreedom) > p) low *= 2;
	let high = low === -1 ? 0 : low / 2;
	for (;;) {
		const middle = (low + high) / 2;
		if (middle <= low || middle >= high) return middle;
		if (studentCdf(middle, degreesOfFreedom) > p) high = middle;
		else low = middle;
	}
}
/** P(|T| > t) = I_x(ν/2, 1/2) with x = ν/(ν + t²), for t² given. */
function bothTails(square, degreesOfFreedom) {
	const a = degreesOfFreedom / 2;
	const x = degreesOfFreedom / (degreesOfFreedom + square);
	const rest = square / (degreesOfFreedom + square);
	const front = Math.exp(-a * Math.log1p(square / degreesOfFreedom)) * Math.sqrt(rest) * gammaRatio(a) / SQRT_PI;
	return x < (a + 1) / (a + 2.5) ? front * betaFraction(x, a, .5) / a : 1 - 2 * front * betaFraction(rest, .5, a);
}
/** Γ(a + ½)/Γ(a): its series in 1/a after raising a to where six terms are exact to a double. */
function gammaRatio(a) {
	let lowered = 1;
	let y = a;
	for (; y < 60; y += 1) lowered *= y / (y + .5);
	const z = 1 / y;
	const series = 1 - z * (1 / 8 - z * (1 / 128 + z * (5 / 1024 - z * (21 / 32768 + z * (399 / 262144)))));
	return lowered * Math.sqrt(y) * series;
}

// src/metrology/term.ts
/** Standard uncertainty of an input: GUM 4.3.3 (normal), 4.3.7 (a/√3), 4.3.9 (a/√6); arcsine a/√2. */
function standardUncertainty(amount, distribution) {
	switch (distribution.kind) {
		case "normal": return amount / distribution.k;
		case "rectangular": return amount / Math.sqrt(3);
		case "triangular": return amount / Math.sqrt(6);
		case "arcsine": return amount / Math.SQRT2;
		case "standard": return amount;
	}
}

// src/metrology/budget.ts
/**
* Combines independent terms by the law of propagation of uncertainty (GUM 5.1.2, first order), with the effective
* degrees of freedom of Welch and Satterthwaite (GUM G.4.1). For coverage by confidence, ν_eff is cut down to a whole
* number first, as the GUM does. All terms in one unit after their sensitivity.
*/
function combine(terms, coverage) {
	const parts = terms.map((term) => {
		const standard = standardUncertainty(term.amount, term.distribution);
		return {
			...term,
			standard,
			contribution: Math.abs(term.sensitivity) * standard
		};
	});
	const variance = parts.reduce((sum, part) => sum + part.contribution ** 2, 0);
	const standard = Math.sqrt(variance);
	const degreesOfFreedom = effectiveDegreesOfFreedom(parts, standard);
	const coverageFactor = "k" in coverage ? coverage.k : coverageFactorFor(degreesOfFreedom, coverage.confidence);
	return {
		rows: parts.map((part) => ({
			...part,
			share: variance === 0 ? 0 : part.contribution ** 2 / variance
		})),
		standard,
		degreesOfFreedom,
		coverageFactor,
		expanded: coverageFactor * standard
	};
}
/** The budget of a reading, expanded at 95 %: k = 2, or that of Student's t where the degrees of freedom are few. */
function budgetOf(terms) {
	return combine(terms, terms.every(({ degreesOfFreedom }) => degreesOfFreedom === Number.POSITIVE_INFINITY) ? { k: 2 } : { confidence: COVERAGE });
}
/** ν_eff = u_c⁴ / Σ(u_i⁴/ν_i) (GUM, formula G.2b). */
function effectiveDegreesOfFreedom(parts, standard) {
	const sum = parts.reduce((total, part) => total + part.contribution ** 4 / part.degreesOfFreedom, 0);
	return sum === 0 ? Number.POSITIVE_INFINITY : standard ** 4 / sum;
}
/** The two-sided k of Student's t that covers `confidence`, for ν_eff cut down to a whole number (GUM G.4.1). */
function coverageFactorFor(degreesOfFreedom, confidence) {
	return studentQuantile((1 + confidence) / 2, Math.max(1, Math.floor(degreesOfFreedom)));
}

// src/plug/geometry.ts
/** What the wrench must show for the fastener to get `target`: T·L/(L + E·cos θ). */
function settingFor(target, crowfoot) {
	return target / leverage(crowfoot);
}
/** What the fastener gets when the wrench shows `setting`: S·(L + E·cos θ)/L. */
function actualAt(setting, crowfoot) {
	return setting * leverage(crowfoot);
}
/** The lengths of an adapter; none means the plug straight under the drive. */
function crowfootOf(adapter) {
	return adapter === void 0 ? {
		arm: 1,
		offset: 0,
		angleDeg: 0
	} : {
		arm: adapter.armMm,
		offset: adapter.offsetMm,
		angleDeg: adapter.angleDeg
	};
}
/** Torque on the fastener for each torque on the drive. Lengths that make no lever throw RangeError. */
function leverage({ arm, offset, angleDeg }) {
	const effective = arm + offset * Math.cos(angleDeg * Math.PI / 180);
	if (!(arm > 0 && offset >= 0 && effective > 0)) throw new RangeError(`arm ${arm}, offset ${offset} and angle ${angleDeg}° make no lever`);
	return effective / arm;
}

// src/job/measurement.ts
/**
* A reading of an instrument, in its own unit, turned into what the plug saw: corrected where the shop corrects, through
* the adapter where there is one. `peakStandard` is what a pull says of its own peak, null for anything else.
*/
function measured(instrument, reading, { on, adapter }, peakStandard) {
	const { correction, terms } = instrumentTerms(instrument, reading, on, peakStandard);
	const corrected = reading - correction;
	if (instrument.quantity === "length") return {
		value: corrected,
		budget: budgetOf(terms)
	};
	const foot = crowfootOf(adapter);
	const gain = leverage(foot);
	const seen = terms.map((term) => ({
		...term,
		sensitivity: term.sensitivity * gain
	}));
	const geometry = adapter === void 0 ? [] : adapterTerms(adapter, adapter.within, corrected);
	return {
		value: actualAt(corrected, foot),
		budget: budgetOf([...seen, ...geometry])
	};
}
/** Certificates are nearly straight, so each round of this takes the error of the one before down to a share of itself. */
const ROUNDS = 12;
/** What the instrument must read for the plug to see `value`: the other direction of {@link measured}. */
function readingFor(instrument, value, { on, adapter }) {
	const setting = instrument.quantity === "torque" ? settingFor(value, crowfootOf(adapter)) : value;
	let reading = setting;
	for (let round = 0; round < ROUNDS; round += 1) reading = setting + instrumentTerms(instrument, reading, on, null).correction;
	return reading;
}

// src/job/windows.ts
/** The window that an instrument can prove within limits at the plug, U at each limit being that of a reading there. */
function windowFor(instrument, { lower, upper }, circumstances, rule) {
	const expandedAt = (value) => {
		const reading = readingFor(instrument, value, circumstances);
		return measured(instrument, reading, circumstances, null).budget.expanded;
	};
	const unit = instrument.quantity === "torque" ? "N.m" : "mm";
	return windowBy(rule, {
		unit,
		lowerLimit: lower,
		upperLimit: upper,
		expandedAt
	});
}
/** Said before the job starts: this instrument cannot decide this window, and what would. */
function undecidable(window, where, rule) {
	if (window.decidable) return null;
	const text = (value) => window.unit === "N.m" ? formatTorque(value) : formatGap(value, 3);
	return {
		code: "window-not-decidable",
		where,
		message: `this tool cannot prove any reading between ${text(window.lowerLimit)} and ${text(window.upperLimit)}: its uncertainty (U = ${text(window.expandedAtUpper)}) leaves no room in the window`,
		next: `Use an instrument with an expanded uncertainty below ${text(largestExpandedBy(rule, window))}.`
	};
}
/** The limits of a window as the wrench reads them: through the adapter, and with its error where the shop corrects. */
function asWrenchReads(state, window) {
	const wrench = state.instruments.find(({ quantity }) => quantity === "torque");
	if (wrench === void 0) return {
		lowerNm: window.lowerLimit,
		upperNm: window.upperLimit
	};
	const circumstances = {
		on: state.basis.on,
		adapter: state.order.adapter
	};
	return {
		lowerNm: readingFor(wrench, window.lowerLimit, circumstances),
		upperNm: readingFor(wrench, window.upperLimit, circumstances)
	};
}

// src/job/torque-step.ts
/** Where a cylinder's torque stands: worked out from its pulls in their order, so that a pull given elsewhere leaves no trace. */
function torqueStep(c, { questions, basis }) {
	if (questions.some(({ cylinder }) => cylinder === c.cylinder)) return "ask";
	let step = c.restartedAfter === void 0 ? "todo" : "again";
	let stage = basis.firstTorqueWindow === null ? "final" : "first";
	for (const attempt of countingPulls(c)) {
		step = stepAfter(attempt, step);
		if (step === "done" && stage !== "final") step = "again";
		if (basis.firstTorqueWindow !== null) stage = stageAfter(stage, attempt);
	}
	const { settlement } = c;
	if (settlement === void 0) return step;
	if (settlement.kind === "accepted") return stillFitted(c, settlement.pull) ? "settled" : step;
	return step === "done" ? "done" : "settled";
}
/** The plug that this pull was on has been there ever since, and was not loosened. */
function stillFitted(c, pull) {
	const pulls = countingPulls(c);
	const at = pulls.findIndex((attempt) => attempt.pull.pull === pull);
	if (at < 0) return false;
	return pulls.slice(at).every(({ kind, answer }) => kind !== "loosening" && answer !== "refit" && answer !== "replace");
}
/** The pulls since the plug was last started again by command. */
function countingPulls({ pulls, restartedAfter = 0 }) {
	return pulls.filter(({ pull }) => pull.pull > restartedAfter);
}
/** What a pull does to the cylinder that it was given to. Only an OK tightening ever makes it `done`. */
function stepAfter({ kind, judgement, answer }, was) {
	if (answer === "refit" || answer === "replace" || answer === "unfinished") return "again";
	if (kind === "loosening") return "again";
	if (judgement === null || kind === "rehit" || kind === "check") return was;
	return judgement.result === "OK" ? "done" : "again";
}
/** The cylinder of the last pull that reached the window or went beyond it. */
function lastTight(state) {
	const { lowerNm } = asWrenchReads(state, state.torqueWindow);
	let last = null;
	for (const { cylinder, pulls } of state.cylinders) for (const { pull, kind } of pulls) if (TIGHT.has(kind) && pull.peakNm >= lowerNm && pull.pull > (last?.pull ?? 0)) last = {
		cylinder,
		pull: pull.pull
	};
	return last?.cylinder ?? null;
}
const TIGHT = /* @__PURE__ */ new Set([
	"tightening",
	"continuation",
	"rehit",
	"check"
]);

// src/job/fold-pulls.ts
/** The state after a pull was given its place, the first time or again. */
function pullPlaced(state, event) {
	const pull = state.lastPull?.pull === event.pull ? state.lastPull : findPull(state, event.pull);
	if (pull === null) throw new Error(`pull ${event.pull} was placed but never found`);
	const { cylinder, kind, because, judgement, ask, evidence, otherPull, leftOut } = event;
	const earlier = findAttempt(state, event.pull);
	const attempt = {
		pull,
		technician: earlier?.technician ?? state.technician,
		kind,
		because,
		...otherPull === void 0 ? {} : { otherPull },
		...leftOut === void 0 ? {} : { leftOut },
		judgement,
		...ask === void 0 ? {} : { ask },
		...evidence === void 0 ? {} : { evidence },
		...earlier?.given === true ? { given: true } : {},
		answer: earlier?.answer ?? null
	};
	const cleared = withoutAttempt(state, event.pull);
	if (cylinder === null) return retighten({
		...cleared,
		strays: [...cleared.strays, attempt]
	});
	const question = questionFor(attempt, cylinder);
	const placed = retighten({
		...withCylinder(cleared, cylinder, (was) => ({
			...was,
			pulls: inOrder([...was.pulls, attempt])
		})),
		questions: question === null ? cleared.questions : [...cleared.questions, question]
	});
	const tightened = judgement !== null && judgement.side !== "low" && kind !== "check";
	const isDone = placed.cylinders.some((c) => c.cylinder === cylinder && isOver(c.torque));
	return {
		...placed,
		refitting: tightened && placed.refitting === cylinder ? null : placed.refitting,
		lastVerdict: verdictAfter(placed, cylinder, judgement),
		chosen: isDone ? {
			...placed.chosen,
			torque: null
		} : placed.chosen
	};
}
/** Notes that a person placed this pull; what the rules make of it follows. */
function withGiven(state, pull) {
	const noted = (list) => list.map((attempt) => attempt.pull.pull === pull ? {
		...attempt,
		given: true
	} : attempt);
	return {
		...state,
		cylinders: state.cylinders.map((c) => ({
			...c,
			pulls: noted(c.pulls)
		})),
		strays: noted(state.strays)
	};
}
const inOrder = (pulls) => [...pulls].sort((a, b) => a.pull.pull - b.pull.pull);
/** Where every cylinder's torque stands after its pulls or its questions changed. */
function retighten(state) {
	const cylinders = state.cylinders.map((c) => ({
		...c,
		torque: torqueStep(c, state)
	}));
	return {
		...state,
		cylinders,
		lastTight: lastTight({
			...state,
			cylinders
		})
	};
}
/** The verdict in large letters. One of another cylinder goes away, lest it be taken for this one's. */
function verdictAfter(state, cylinder, judgement) {
	if (judgement !== null) return {
		quantity: "torque",
		cylinder,
		judgement
	};
	return state.lastVerdict?.cylinder === cylinder ? state.lastVerdict : null;
}
const findPull = (state, pull) => findAttempt(state, pull)?.pull ?? null;
function findAttempt(state, pull) {
	return [...state.cylinders.flatMap((c) => c.pulls), ...state.strays].find((attempt) => attempt.pull.pull === pull);
}
/** A pull stands in one place only, and so does what was asked about it; where it stood before stays in the log. */
function withoutAttempt(state, pull) {
	const others = (list) => list.filter((attempt) => attempt.pull.pull !== pull);
	return {
		...state,
		cylinders: state.cylinders.map((c) => ({
			...c,
			pulls: others(c.pulls)
		})),
		strays: others(state.strays),
		questions: state.questions.filter((open) => open.pull !== pull)
	};
}
/** The state with one cylinder changed. */
function withCylinder(state, cylinder, change) {
	return {
		...state,
		cylinders: state.cylinders.map((c) => c.cylinder === cylinder ? change(c) : c)
	};
}

// src/problem.ts
/** A {@link Problem} on its way up through code that cannot handle it; the command line prints it as one sentence. */
var ProblemError = class extends Error {
	name = "ProblemError";
	problem;
	constructor(problem, options) {
		super(problem.message, options);
		this.problem = problem;
	}
};

// src/result.ts
const ok = (value) => ({
	ok: true,
	value
});
const err = (error) => ({
	ok: false,
	error
});
/** The value, or the problem thrown as a {@link ProblemError}: for the shell, where nobody can do better. */
function orThrow(result) {
	if (result.ok) return result.value;
	throw new ProblemError(result.error);
}

// src/quantity/kind.ts
const TORQUE = {
	measured: "torque",
	units: [
		"N.m",
		"[ft_i].[lbf_av]",
		"[in_i].[lbf_av]",
		"kgf.m",
		"kgf.cm"
	],
	unitsInWords: "N·m, lbf·ft, lbf·in, kgf·m or kgf·cm",
	example: "25-30 N·m or 18 N·m ±10 %",
	toSi: newtonMetres,
	largest: 1e3,
	fractions: false,
	bareFigure: false
};
const LENGTH$1 = {
	measured: "length",
	units: [
		"mm",
		"[in_i]",
		"[mil_i]"
	],
	unitsInWords: "mm, in or mil",
	example: "0.7-0.8 mm or 1.0 +0/-0.1 mm",
	toSi: millimetres,
	largest: 100,
	fractions: false,
	bareFigure: false
};
const ANGLE = {
	measured: "angle",
	units: ["deg", "circ"],
	unitsInWords: "° or turn",
	example: "1/2-2/3 turn or 90°",
	toSi: degrees,
	largest: 3600,
	fractions: true,
	bareFigure: true
};

// src/quantity/spelling.ts
/** What may stand between the two parts of a product: nothing, spaces, a dot of any kind, a hyphen of any kind. */
const JOIN = String.raw`[\t\p{Zs}.·⋅•∙‧*×_\-\u2010-\u2015\u2212]{0,3}`;
const product = (left, right) => `(?:${left})${JOIN}(?:${right})`;
const eitherWay = (left, right) => `${product(left, right)}|${product(right, left)}`;
const NEWTON = "newtons?|n";
const METRE = "met(?:re|er)s?|m";
const POUND = "pounds?(?:-force)?|lbf|lbs?";
const FOOT = "foot|feet|ft";
const INCH = "inch(?:es)?|ins?";
const KILOGRAM_FORCE = "kgf|kg|kp";
const MATCHERS = [
	[String.raw`\[ft_i\]\.\[lbf_av\]`, {
		measured: "torque",
		unit: "[ft_i].[lbf_av]"
	}],
	[String.raw`\[in_i\]\.\[lbf_av\]`, {
		measured: "torque",
		unit: "[in_i].[lbf_av]"
	}],
	[String.raw`\[in_i\]`, {
		measured: "length",
		unit: "[in_i]"
	}],
	[String.raw`\[mil_i\]`, {
		measured: "length",
		unit: "[mil_i]"
	}],
	[product(NEWTON, METRE), {
		measured: "torque",
		unit: "N.m"
	}],
	[eitherWay(POUND, FOOT), {
		measured: "torque",
		unit: "[ft_i].[lbf_av]"
	}],
	[eitherWay(POUND, INCH), {
		measured: "torque",
		unit: "[in_i].[lbf_av]"
	}],
	[eitherWay(KILOGRAM_FORCE, "m"), {
		measured: "torque",
		unit: "kgf.m"
	}],
	[eitherWay(KILOGRAM_FORCE, "cm"), {
		measured: "torque",
		unit: "kgf.cm"
	}],
	[String.raw`(?:n|lbf?|kgf?)\/(?:mm|m|ft|in)`, {
		measured: "stiffness",
		unit: null
	}],
	["joules?|k?j", {
		measured: "energy",
		unit: null
	}],
	["millimet(?:re|er)s?|mm", {
		measured: "length",
		unit: "mm"
	}],
	[`${INCH}|["″”“]|''|′′|’’`, {
		measured: "length",
		unit: "[in_i]"
	}],
	["mils?|thous?", {
		measured: "length",
		unit: "[mil_i]"
	}],
	[`micromet(?:re|er)s?|[µμ]m|cm|${METRE}|${FOOT}`, {
		measured: "length",
		unit: null
	}],
	["degrees?|deg|°", {
		measured: "angle",
		unit: "deg"
	}],
	["(?:of (?:a|one) )?(?:turns?|revolutions?)", {
		measured: "angle",
		unit: "circ"
	}],
	[`${NEWTON}|${POUND}|${KILOGRAM_FORCE}|ozf?`, {
		measured: "force or mass",
		unit: null
	}]
].map(([pattern, spelling]) => [new RegExp(String.raw`(?:${pattern})(?![·⋅•∙‧*×.]?[\p{L}\p{N}_/²³^])(?:\.(?!\d))?`, "iuy"), spelling]);
/** The unit that stands at `at` in `text`, however people spell it, or null. */
function spellingAt(text, at) {
	for (const [matcher, spelling] of MATCHERS) {
		matcher.lastIndex = at;
		const match = matcher.exec(text);
		if (match !== null) return {
			length: match[0].length,
			spelling
		};
	}
	return null;
}

// src/quantity/scan.ts
const MAX_TEXT = 200;
const MAX_DIGITS = 8;
/** Spaces of every width, but no line ends: what is printed here goes on one line of a record. */
const SPACE = /[\t\p{Zs}\u200B\u2060\uFEFF]+/uy;
const DASH = String.raw`[\-\u2010-\u2015\u2212\uFE63\uFF0D]`;
const FIGURE = /(?:\d+[\t\p{Zs}]+)?\d+\/\d+|\d*[½⅓⅔¼¾⅛⅙]|\d+(?:[.,']\d+)*|\.\d+/uy;
const MARKS = [
	["p", new RegExp(String.raw`±|\+[\t\p{Zs}]*/?[\t\p{Zs}]*${DASH}`, "uy")],
	["t", /\.{2,3}|…|~|to(?!\p{L})/iuy],
	["d", new RegExp(DASH, "uy")],
	["+", /\+/uy],
	["/", /[/,]/uy],
	["%", /%/uy]
];
const VULGAR = {
	"½": 1 / 2,
	"⅓": 1 / 3,
	"⅔": 2 / 3,
	"¼": 1 / 4,
	"¾": 3 / 4,
	"⅛": 1 / 8,
	"⅙": 1 / 6
};
/** A {@link Problem} about the piece of `text` at `at`, counted from 1 as people do. */
function problemAt(text, at, code, message, next) {
	return {
		code,
		message,
		next,
		where: `character ${at + 1} of "${printable(text)}"`
	};
}
/** Outside text inside a message: no control or direction characters, never long. */
function printable(text) {
	const clean = text.replace(/[\p{Cc}\p{Cf}\p{Zl}\p{Zp}]/gu, "?").trim();
	return clean.length > 80 ? `${clean.slice(0, 79)}…` : clean;
}
/** The text cut into figures, units and marks. Problems: unknown characters or words, figures that could mean two things. */
function scan(text) {
	if (text.length > MAX_TEXT) return err({
		code: "not-understood",
		message: `the text has ${text.length} characters; a range has a few`,
		next: "Give the range alone, for example 25-30 N·m."
	});
	const tokens = [];
	let at = 0;
	while (at < text.length) {
		const space = matchAt(SPACE, text, at);
		if (space !== null) {
			at += space.length;
			continue;
		}
		const token = tokenAt(text, at);
		if (!token.ok) return token;
		tokens.push(token.value);
		at += token.value.text.length;
	}
	return ok(tokens);
}
function matchAt(matcher, text, at) {
	matcher.lastIndex = at;
	return matcher.exec(text)?.[0] ?? null;
}
function tokenAt(text, at) {
	for (const [kind, matcher] of MARKS) {
		const mark = matchAt(matcher, text, at);
		if (mark !== null) return ok({
			kind,
			at,
			text: mark
		});
	}
	const figure = matchAt(FIGURE, text, at);
	if (figure !== null) return figureToken(text, at, figure);
	const unit = spellingAt(text, at);
	if (unit !== null) return ok({
		kind: "u",
		at,
		text: text.slice(at, at + unit.length),
		spelling: unit.spelling
	});
	const word = matchAt(/[\p{L}\p{N}/·⋅.°²³^_-]+/uy, text, at);
	return err(word === null ? problemAt(text, at, "not-understood", `"${printable(text.charAt(at))}" cannot be read here`, "Give one range in one unit, for example 25-30 N·m.") : problemAt(text, at, "unit-not-known", `"${printable(word)}" is not a known unit or word`, "Write for example N·m, lbf·ft, lbf·in, kgf·m, mm, in, mil, ° or turn."));
}
function figureToken(text, at, figure) {
	const digits = figure.replace(/\D/gu, "");
	const refuse = (code, message, next) => err(problemAt(text, at, code, message, next));
	if (digits.length > MAX_DIGITS) return refuse("figure-absurd", `"${figure}" has ${digits.length} digits; no publisher prints more than ${MAX_DIGITS}`, "Give the figure as printed in the source.");
	if (/[/½⅓⅔¼¾⅛⅙]/u.test(figure)) return ok({
		kind: "n",
		at,
		text: figure,
		value: fraction(figure),
		fraction: true,
		grouped: null
	});
	if (figure.includes("'") || figure.split(/[.,]/u).length > 2 || /^[1-9]\d{0,2},\d{3}$/u.test(figure)) return refuse("figure-ambiguous", `"${figure}" can be read as a thousand or as a decimal`, "Write thousands without a separator and decimals with a point.");
	const grouped = /^[1-9]\d{0,2}\.\d{3}$/u.test(figure) ? Number(figure.replace(".", "")) : null;
	return ok({
		kind: "n",
		at,
		text: figure,
		value: Number(figure.replace(",", ".")),
		fraction: false,
		grouped
	});
}
/** `1/2`, `1 1/2`, `½`, `1½`. */
function fraction(figure) {
	const vulgar = VULGAR[figure.at(-1) ?? ""];
	if (vulgar !== void 0) return Number(figure.slice(0, -1)) + vulgar;
	const [lower = 1, upper = 0, whole = 0] = (figure.match(/\d+/gu) ?? []).map(Number).reverse();
	return whole + upper / lower;
}

// src/quantity/read.ts
/** What may be printed, over the kinds of {@link Token}: `n` figure, `u` unit, the rest as in the scanner. */
const SHAPES = {
	single: /^nu?/u,
	pair: /^nu?[dt]nu?/u,
	symmetric: /^nu?pn%?u?/u,
	plusMinus: /^nu?\+n%?u?\/?dn%?u?/u,
	minusPlus: /^nu?dn%?u?\/?\+n%?u?/u
};
/** The tokens of `text` as one shape in one unit of the wanted quantity. */
function read(text, kind) {
	const tokens = scan(text);
	if (!tokens.ok) return tokens;
	const shape = shapeOf(text, tokens.value, kind);
	if (!shape.ok) return shape;
	const unit = unitOf$1(text, tokens.value, kind);
	if (!unit.ok) return unit;
	const figures = tokens.value.filter((token) => token.kind === "n");
	const strange = kind.fractions ? void 0 : figures.find((figure) => figure.fraction);
	if (strange !== void 0) return err(problemAt(text, strange.at, "figure-ambiguous", `"${strange.text}" can be read as a fraction or as a range`, `Write a range with a dash, for example ${kind.example}.`));
	const grouped = figures.find((figure) => figure.grouped !== null && kind.toSi(figure.grouped, unit.value) <= kind.largest);
	if (grouped !== void 0) return err(problemAt(text, grouped.at, "figure-ambiguous", `"${grouped.text}" can be read as a thousand or as a decimal`, "Write thousands without a separator and decimals without needless zeros."));
	return ok({
		text,
		shape: shape.value,
		unit: unit.value,
		figures,
		percents: tokens.value.filter((token) => token.kind === "%").length
	});
}
function shapeOf(text, tokens, kind) {
	const kinds = tokens.map((token) => token.kind).join("");
	const negative = /^d|[dtp]d/u.exec(kinds);
	const minus = negative === null ? void 0 : tokens[negative.index + negative[0].length - 1];
	if (minus !== void 0 && kinds.includes("n")) return err(problemAt(text, minus.at, "not-positive", "a figure has a minus sign", `Expected figures above zero, for example ${kind.example}.`));
	let understood = 0;
	for (const shape of Object.keys(SHAPES)) {
		const length = SHAPES[shape].exec(kinds)?.[0].length ?? 0;
		if (length === kinds.length && length > 0) return ok(shape);
		understood = Math.max(understood, length);
	}
	const stray = tokens[understood];
	const before = tokens[understood - 1];
	if (stray?.kind === "n" && before?.kind === "n" && /^\d{3}$/u.test(stray.text)) return err(problemAt(text, before.at, "figure-ambiguous", `"${before.text} ${stray.text}" can be one figure in groups of three or two figures`, "Write thousands without a separator and ranges with a dash."));
	return err(notUnderstood(text, stray?.at ?? 0, kind));
}
function unitOf$1(text, tokens, kind) {
	const unitTokens = tokens.filter((token) => token.kind === "u");
	let unit;
	for (const token of unitTokens) {
		const { measured, unit: code } = token.spelling;
		const allowed = kind.units.find((candidate) => candidate === code);
		if (allowed === void 0) return err(measured === kind.measured ? problemAt(text, token.at, "unit-not-known", `"${token.text}" is not a unit in which this ${measured} is printed`, `Expected ${kind.unitsInWords}.`) : problemAt(text, token.at, "unit-of-another-quantity", `"${token.text}" is a unit of ${measured}, not of ${kind.measured}`, `Expected ${kind.unitsInWords}.`));
		if (unit !== void 0 && unit !== allowed) return err(problemAt(text, token.at, "unit-mixed", `"${token.text}" is the second unit in one range`, "Give the figures in one unit, the one that the source prints first."));
		unit = allowed;
	}
	if (unit === void 0) return err(problemAt(text, text.length, "unit-missing", "there is no unit", `Expected ${kind.unitsInWords}.`));
	return ok(unit);
}
/** The refusal of last resort. */
function notUnderstood(text, at, kind) {
	return problemAt(text, at, "not-understood", `expected one ${kind.measured} in one unit and nothing else`, `Write for example ${kind.example}.`);
}

// src/quantity/range.ts
/** A torque range with both limits. Problems: see {@link parseRange}. */
const parseTorqueRange = (text) => parseRange(text, TORQUE);
/** A range of lengths with both limits. Problems: see {@link parseRange}. */
const parseLengthRange = (text) => parseRange(text, LENGTH$1);
/** An angle as advised on a box: a range, or one figure (`1/2 turn`), whose limits then coincide. */
const parseAngleRange = (text) => parseRange(text, ANGLE);
/** One length, for example `0.75 mm`. */
const parseLength = (text) => parseFigure(text, LENGTH$1);
/**
* Problems: `not-understood`, `unit-missing`, `unit-mixed`, `unit-of-another-quantity`, `unit-not-known`,
* `figure-ambiguous`, `figure-absurd`, `not-positive`, `range-reversed`, `no-tolerance`.
*/
function parseRange(given, kind) {
	const printed = read(given.trim(), kind);
	if (!printed.ok) return printed;
	const { text, shape, unit, figures } = printed.value;
	const [first, second, third] = figures;
	if (first === void 0) return err(notUnderstood(text, 0, kind));
	if (second === void 0 && !kind.bareFigure) return err(problemAt(text, first.at, "no-tolerance", `"${first.text}" is a single figure; a reading is compared with a range`, `Add the tolerance that the source allows, for example ${kind.example}.`));
	const limits = second === void 0 ? ok({
		lower: first.value,
		upper: first.value
	}) : limitsOf(printed.value, first, second, third);
	if (!limits.ok) return limits;
	const { lower, upper } = limits.value;
	const problem = implausible$1(text, kind, unit, [[first, lower], [second ?? first, upper]]);
	if (problem !== null) return err(problem);
	const nominal = shape === "pair" ? {} : { nominal: first.value };
	return ok({
		printed: text,
		unit,
		lower,
		upper,
		...nominal
	});
}
/** Problems: those of {@link parseRange} save the ones about ranges. */
function parseFigure(given, kind) {
	const printed = read(given.trim(), kind);
	if (!printed.ok) return printed;
	const { text, unit, figures } = printed.value;
	const [first, second] = figures;
	if (first === void 0) return err(notUnderstood(text, 0, kind));
	if (second !== void 0) return err(problemAt(text, second.at, "not-understood", "expected one figure, not a range", `Give one figure in ${kind.unitsInWords}.`));
	const problem = implausible$1(text, kind, unit, [[first, first.value]]);
	if (problem !== null) return err(problem);
	return ok({
		printed: text,
		unit,
		figure: first.value
	});
}
function limitsOf({ text, shape, percents }, first, second, third) {
	const nominal = first.value;
	const last = third ?? second;
	if (percents !== 0 && percents !== (third === void 0 ? 1 : 2)) return err(problemAt(text, second.at, "unit-mixed", "one deviation is in % and the other is not", "Give both in % or both in the unit."));
	const amount = (figure) => percents === 0 ? figure.value : nominal * figure.value / 100;
	const [minus, plus] = shape === "minusPlus" ? [second, last] : [last, second];
	const lower = shape === "pair" ? nominal : clean(nominal - amount(minus));
	const upper = shape === "pair" ? second.value : clean(nominal + amount(plus));
	if (lower < upper) return ok({
		lower,
		upper
	});
	return err(lower > upper ? problemAt(text, second.at, "range-reversed", `the range runs from ${lower} down to ${upper}`, "Give the lower figure first.") : problemAt(text, second.at, "no-tolerance", `both limits are ${lower}; no reading can be proven`, "Give the tolerance that the source allows."));
}
/** Takes off the noise of binary arithmetic; twelve figures are more than any source prints. */
const clean = (figure) => Number(figure.toPrecision(12));
function implausible$1(text, kind, unit, figures) {
	for (const [token, figure] of figures) {
		if (!(figure > 0)) return problemAt(text, token.at, "not-positive", `${Number.isNaN(figure) ? `"${token.text}"` : figure} is not above zero`, `Expected figures above zero, for example ${kind.example}.`);
		if (!(kind.toSi(figure, unit) <= kind.largest)) return problemAt(text, token.at, "figure-absurd", `"${token.text}" is far too large for a spark plug`, "Check the figure and its unit against the source.");
	}
	return null;
}

// src/quantity/rounded.ts
/**
* The nearest number with so many decimals, never a minus zero. What is recorded is rounded to where digits still mean
* something: the last ones of a logarithm or a root differ between machines, and another machine must find the same.
*/
function rounded(value, decimals) {
	return Number(value.toFixed(decimals)) + 0;
}

// src/personal.ts
/**
* Stands in the place of a text that was withheld or forgotten. A private-use character, so that it fits wherever the text
* itself would and nobody has typed it; whatever prints it says "withheld".
*/
const WITHHELD = "";
const isWithheld = (text) => text === "";

// src/plug/tightening.ts
/** `problem` with the field of the order in front of its place. */
function inField(problem, field) {
	return {
		...problem,
		where: problem.where === void 0 ? field : `${field}, ${problem.where}`
	};
}
/**
* The figures of a specification in N·m and degrees. Limits come from the one unit as printed, so no rounded second unit
* ever decides. Problems: those of the parser, and `reduced-twice` where the figure assumes lubricated threads already.
*/
function tighteningOf(specification) {
	const { torque, tightenFirst, angle, reduction, threads } = specification;
	const turn = parseAngleRange(torque);
	if (turn.ok) return ok({
		kind: "angle",
		turn: limitsDeg(turn.value)
	});
	if (reduction !== void 0 && threads !== "dry") return err({
		code: "reduced-twice",
		where: "specification.reduction",
		message: `the figure is already for ${threads} threads; a reduction for ${reduction.lubricant} threads would count twice`,
		next: "Remove the reduction, or give the figure for dry threads."
	});
	const share = 1 - (reduction?.percent ?? 0) / 100;
	const limits = torqueLimits(torque, "specification.torque", share);
	if (!limits.ok) return limits;
	const first = tightenFirst === void 0 ? ok(null) : torqueLimits(tightenFirst, "specification.tightenFirst", share);
	if (!first.ok) return first;
	if (angle === void 0) return ok({
		kind: "torque",
		limits: limits.value,
		first: first.value,
		advised: null
	});
	const advised = parseAngleRange(angle);
	if (!advised.ok) return err(inField(advised.error, "specification.angle"));
	return ok({
		kind: "torque",
		limits: limits.value,
		first: first.value,
		advised: limitsDeg(advised.value)
	});
}
function torqueLimits(text, field, share) {
	const range = parseTorqueRange(text);
	if (!range.ok) return err(inField(range.error, field));
	const { lowerNm, upperNm } = limitsNm(range.value);
	return ok({
		lowerNm: lowerNm * share,
		upperNm: upperNm * share
	});
}

// src/plug/gap.ts
/** How the gap is found; a gauge unless the specification says otherwise. */
const gapCheckOf = ({ gapRules }) => gapRules?.check ?? "gauge";
/**
* The limits of the gap in mm; null where the specification gives none and the gap is not measured. Problems: those of the
* parser with their field, `gap-missing`, `service-limit-below-range`.
*/
function gapLimitsOf(specification, plug) {
	const { gap, gapRules } = specification;
	if (gap === void 0) {
		const check = gapCheckOf(specification);
		if (check === "visual-only" || check === "not-permitted") return ok(null);
		return err({
			code: "gap-missing",
			where: "specification.gap",
			message: "the specification has no gap",
			next: "Give the gap as printed, for example 0.7-0.8 mm, or set gapRules.check so that it is not measured."
		});
	}
	const range = parseLengthRange(gap);
	if (!range.ok) return err(inField(range.error, "specification.gap"));
	const limits = limitsMm(range.value);
	const service = lengthIn(gapRules?.serviceLimit, "serviceLimit");
	if (!service.ok) return service;
	if (service.value !== null && order(service.value, limits.upperMm) < 0) return err({
		code: "service-limit-below-range",
		where: "specification.gapRules.serviceLimit",
		message: `the service limit of ${service.value} mm lies below the gap of a new plug`,
		next: "Give the widest gap at which a used plug may go on."
	});
	return ok(plug.condition === "used" && service.value !== null ? {
		...limits,
		upperMm: service.value
	} : limits);
}
/** The wires of a go/no-go check. Problems: `wires-missing`, `range-reversed`, those of the parser. */
function wiresOf({ gapRules }) {
	const wires = gapRules?.wires;
	const where = "specification.gapRules.wires";
	if (wires === void 0) return err({
		code: "wires-missing",
		where,
		message: "the gap is checked by wire, but no wires are given",
		next: "Give the wires, for example {\"go\": \"0.72 mm\", \"noGo\": \"0.78 mm\", \"within\": \"0.003 mm\"}."
	});
	const go = lengthIn(wires.go, "wires.go");
	if (!go.ok) return go;
	const noGo = lengthIn(wires.noGo, "wires.noGo");
	if (!noGo.ok) return noGo;
	const within = lengthIn(wires.within, "wires.within");
	if (!within.ok) return within;
	const [goMm, noGoMm, withinMm] = [
		go.value ?? 0,
		noGo.value ?? 0,
		within.value ?? 0
	];
	if (goMm < noGoMm) return ok({
		goMm,
		noGoMm,
		withinMm
	});
	return err({
		code: "range-reversed",
		where,
		message: "the go wire is not thinner than the no-go wire",
		next: "Give the thinner wire as go."
	});
}
/** The gap as an interval in mm; null at an end that the wires leave open. */
function wireInterval(outcome, { goMm, noGoMm }) {
	switch (outcome) {
		case "fits": return {
			lower: goMm,
			upper: noGoMm
		};
		case "tight": return {
			lower: null,
			upper: goMm
		};
		case "wide": return {
			lower: noGoMm,
			upper: null
		};
	}
}
/** How far an electrode may be bent in all where the specification is silent: 0.2 mm, as plug makers advise. */
const BEND_MOST_MM = .2;
/** Problems: those of the parser. */
function gapPolicyOf(specification, plug) {
	const adjusting = adjustingOf(specification, plug);
	if (!adjusting.ok) return adjusting;
	const { barred, bendMostMm } = adjusting.value;
	return ok({
		check: gapCheckOf(specification),
		adjustable: barred === null,
		bendMostMm
	});
}
/** Whether the gap of this plug may be set by bending, and how far. Problems: those of the parser. */
function adjustingOf({ gapRules }, plug) {
	const most = lengthIn(gapRules?.bendMost, "bendMost");
	if (!most.ok) return most;
	return ok({
		barred: barredBy(gapRules?.adjustable, plug),
		bendMostMm: most.value ?? BEND_MOST_MM
	});
}
function barredBy(rule, plug) {
	if (rule === "no") return "not-adjustable";
	if (rule === "new-only" && plug.condition === "used") return "used-not-adjustable";
	if (rule !== void 0) return null;
	if (plug.tip !== void 0 && plug.tip !== "nickel") return "tip-not-adjustable";
	return (plug.groundElectrodes ?? 1) > 1 ? "several-electrodes-not-adjustable" : null;
}
/**
* The next step for one plug after one more reading of its gap. A change between readings counts as bending only beyond
* `noticeableMm`; it adds up, because the metal does.
*/
function gapStep({ last, step }, reading, rules) {
	if (step?.do === "replace") return step;
	const change = last === null ? 0 : Math.abs(reading.valueMm - last.valueMm);
	const bentMm = (step?.bentMm ?? 0) + (order(change, rules.noticeableMm) > 0 ? change : 0);
	const { barred, bendMostMm } = rules.adjusting;
	const bent = bentMm > 0 ? { bentMm: tenth(bentMm) } : {};
	const limitMm = tenth(bendMostMm);
	if (bentMm > 0 && barred !== null) return {
		do: "replace",
		because: barred,
		...bent
	};
	if (order(bentMm, bendMostMm) > 0) return {
		do: "replace",
		because: "bent-too-far",
		...bent,
		limitMm
	};
	if (reading.proven) return {
		do: "fit",
		bentMm
	};
	if (barred !== null) return {
		do: "replace",
		because: barred
	};
	const bendMm = Math.abs(rules.middleMm - reading.valueMm);
	const neededMm = tenth(bentMm + bendMm);
	if (order(bentMm + bendMm, bendMostMm) > 0) return {
		do: "replace",
		because: "needs-too-much",
		...bent,
		neededMm,
		limitMm
	};
	return {
		do: "regap",
		bentMm,
		bendMm
	};
}
/** To a tenth of a micrometre: what is signed must not end in the noise of a sum. */
const tenth = (lengthMm) => rounded(lengthMm, 4);
function lengthIn(text, field) {
	if (text === void 0) return ok(null);
	const length = parseLength(text);
	if (!length.ok) return err(inField(length.error, `specification.gapRules.${field}`));
	return ok(millimetres(length.value.figure, length.value.unit));
}

// src/job/plugs.ts
/** The plug in a cylinder: the readings of its own gap, and what they ask for. */
const NEW = {
	gapsBefore: 0,
	step: null
};
/** The plug that is in a cylinder now, or on its way into it. */
const plugOf = (state, cylinder) => state.plugs[cylinder] ?? NEW;
/** The state with what the plug's gap asks for. */
function withGapStep(state, cylinder, step) {
	return {
		...state,
		plugs: {
			...state.plugs,
			[cylinder]: {
				...plugOf(state, cylinder),
				step
			}
		}
	};
}
/** Another plug takes the place of the one in a cylinder: nothing is known of its gap. */
function withNewPlug(state, cylinder) {
	const c = state.cylinders.find((one) => one.cylinder === cylinder);
	if (c === void 0) return state;
	const gap = firstGapState(state.order) === "done" ? "done" : "again";
	const { [cylinder]: _gone, ...newPlugs } = state.newPlugs;
	return {
		...state,
		newPlugs,
		plugs: {
			...state.plugs,
			[cylinder]: {
				gapsBefore: c.gaps.length,
				step: null
			}
		},
		cylinders: state.cylinders.map((one) => one === c ? {
			...c,
			gap
		} : one)
	};
}
/** What the plug of this cylinder asks for after the last of its readings; null while there is none. */
function gapStepOf(state, { cylinder, gaps }) {
	const { gapWindow, order, basis } = state;
	const { gapsBefore, step } = plugOf(state, cylinder);
	const [last, reading] = gaps.slice(Math.max(gapsBefore, gaps.length - 2)).map(seen);
	if (gapWindow === null || last === void 0) return null;
	const rules = {
		adjusting: {
			...orThrow(adjustingOf(order.specification, order.plug)),
			allowed: basis.gap.adjustable,
			bendMostMm: basis.gap.bendMostMm
		},
		noticeableMm: Math.SQRT2 * gapWindow.expandedAtUpper,
		middleMm: (gapWindow.acceptLower + gapWindow.acceptUpper) / 2
	};
	return reading === void 0 ? gapStep({
		last: null,
		step
	}, last, rules) : gapStep({
		last,
		step
	}, reading, rules);
}
const seen = ({ judgement }) => ({
	valueMm: judgement.value,
	proven: judgement.result === "OK"
});
/** The gap of a cylinder before anybody looked: nothing is due where the specification forbids to measure. */
const firstGapState = (order) => gapCheckOf(order.specification) === "not-permitted" ? "done" : "todo";

// src/job/fold.ts
/**
* The state after one more event. Pure: the same events give the same state, on the bench, after a restart, and years
* later from a record. Throws when the first event is not `job-opened`, which only a bug or a forged record can bring.
*/
function fold(before, event) {
	if (event.type === "job-opened") return retarget(opened(event));
	if (before === null) throw new Error(`a job starts with job-opened, not ${event.type}`);
	return retarget(next(before, event));
}
/** Folds a whole job; null for no events. */
function foldAll(events) {
	let state = null;
	for (const event of events) state = fold(state, event);
	return state;
}
function opened(event) {
	return {
		order: event.order,
		technician: event.order.technician,
		instruments: event.instruments,
		torqueWindow: event.torqueWindow,
		gapWindow: event.gapWindow,
		basis: event.basis,
		rules: event.rules,
		session: 0,
		routine: event.routine ?? null,
		windowsConfirmed: false,
		attested: {},
		oldPlugs: {},
		newPlugs: {},
		oldPlugTarget: null,
		sources: [],
		cylinders: event.order.engine.serviceOrder.map((cylinder) => ({
			cylinder,
			gap: firstGapState(event.order),
			torque: "todo",
			gaps: [],
			pulls: []
		})),
		plugs: {},
		gapTarget: null,
		torqueTarget: null,
		chosen: {
			torque: null,
			length: null,
			"old-plug": null
		},
		refitting: null,
		lastTight: null,
		tools: Object.fromEntries(event.instruments.map(({ id }) => [id, {
			tool: id,
			link: "seeking"
		}])),
		strays: [],
		pullCount: 0,
		lastPull: null,
		lastVerdict: null,
		questions: [],
		closed: null,
		voided: null
	};
}
function next(state, event) {
	if (isChecklistEvent(event)) return foldChecklist(state, event);
	switch (event.type) {
		case "session-started": return {
			...state,
			session: event.session,
			tools: unlinked(state)
		};
		case "tool-linked": return withTool(withSource(state, event.source), event.tool, {
			tool: event.tool,
			link: "linked",
			description: event.description,
			source: event.source
		});
		case "uncertainty-declared": return uncertaintyDeclared(state, event);
		case "tool-lost": {
			const { type: _type, tool, ...end } = event;
			return withTool(state, tool, {
				tool,
				link: "lost",
				end
			});
		}
		case "gap-measured": return gapMeasured(state, event);
		case "gap-inspected": return gapInspected(state, event);
		case "plug-scrapped": return plugScrapped(state, event.cylinder);
		case "pull-detected": {
			const { type: _type, ...pull } = event;
			return {
				...state,
				pullCount: pull.pull,
				lastPull: pull
			};
		}
		case "pull-placed": return pullPlaced(state, event);
		case "cylinder-chosen": return {
			...state,
			chosen: {
				...state.chosen,
				[event.quantity]: event.cylinder
			}
		};
		case "pull-given": return withGiven(state, event.pull);
		case "cylinder-restarted": return restarted(state, event);
		case "question-answered": return questionAnswered(state, event);
		case "pull-accepted": return accepted(state, event);
		case "fitted-by-angle": {
			const { cylinder, turn, why } = event;
			return settled(state, cylinder, {
				kind: "by-angle",
				turn,
				why
			});
		}
		case "job-closed": return {
			...state,
			closed: {
				complete: event.complete,
				open: event.open
			}
		};
		case "job-handed-over": return {
			...state,
			technician: event.to
		};
		case "job-voided": return voided(state, event);
		case "instrument-overridden":
		case "wire-tried":
		case "cylinder-left-out":
		case "readings":
		case "readings-missed":
		case "value-stored":
		case "device-refused":
		case "value-not-known":
		case "raw-value": return state;
	}
}
function voided(state, { by, reason }) {
	return {
		...state,
		voided: {
			by,
			reason
		},
		closed: {
			complete: false,
			open: [{ kind: "declared-void" }]
		}
	};
}
/** Figures of one more source. */
function withSource(state, source) {
	return {
		...state,
		sources: sourcesOf([...state.sources, source])
	};
}
function unlinked(state) {
	return Object.fromEntries(state.instruments.map(({ id }) => [id, {
		tool: id,
		link: "seeking"
	}]));
}
function withTool(state, tool, value) {
	return {
		...state,
		tools: {
			...state.tools,
			[tool]: value
		}
	};
}
function gapMeasured(state, event) {
	const { cylinder, judgement, reading, tool, source } = event;
	const { technician } = state;
	const measured = withCylinder(withSource(state, source), cylinder, (was) => ({
		...was,
		gaps: [...was.gaps, {
			reading,
			tool,
			source,
			technician,
			judgement
		}]
	}));
	const c = measured.cylinders.find((one) => one.cylinder === cylinder);
	const step = c === void 0 ? null : gapStepOf(measured, c);
	const gap = step?.do === "fit" ? "done" : "again";
	return {
		...withGapStep(withCylinder(measured, cylinder, (was) => ({
			...was,
			gap
		})), cylinder, step),
		lastVerdict: {
			quantity: "length",
			cylinder,
			judgement
		},
		chosen: gap === "done" ? {
			...state.chosen,
			length: null
		} : state.chosen
	};
}
function gapInspected(state, { cylinder, sound }) {
	const step = sound ? { do: "fit" } : {
		do: "replace",
		because: "not-sound"
	};
	const seen = withCylinder(state, cylinder, (was) => ({
		...was,
		gap: sound ? "done" : "again"
	}));
	return {
		...withGapStep(seen, cylinder, step),
		chosen: {
			...state.chosen,
			length: null
		}
	};
}
/** Another plug for a cylinder: one that was tightened comes out first. */
function plugScrapped(state, cylinder) {
	const c = state.cylinders.find((one) => one.cylinder === cylinder);
	return c !== void 0 && (c.pulls.length > 0 || c.settlement !== void 0) ? restarted(state, {
		cylinder,
		newPlug: true
	}) : withNewPlug(state, cylinder);
}
function questionAnswered(state, event) {
	const about = state.questions.find(({ pull }) => pull === event.pull);
	const before = (event.answer === "refit" || event.answer === "replace") && about !== void 0 ? unsettled(state, about.cylinder) : state;
	const after = retighten(answered(before, event.pull, event.answer));
	return event.answer === "replace" && about !== void 0 ? withNewPlug(after, about.cylinder) : after;
}
/** Somebody answers for a pull over the window: it stays, and nobody is asked about it any more. */
function accepted(state, { pull, cylinder, by, reason }) {
	const questions = state.questions.filter((open) => open.pull !== pull);
	return settled({
		...state,
		questions
	}, cylinder, {
		kind: "accepted",
		pull,
		by,
		reason
	});
}
/** A cylinder is left as it is: not proven, and not due any more. */
function settled(state, cylinder, settlement) {
	const after = retighten(withCylinder(state, cylinder, (was) => ({
		...was,
		settlement
	})));
	return {
		...after,
		refitting: after.refitting === cylinder ? null : after.refitting,
		chosen: {
			...after.chosen,
			torque: null
		}
	};
}
/** Another plug, or the same one anew: whoever answered for how it stood answers for it no more. */
const unsettled = (state, cylinder) => withCylinder(state, cylinder, ({ settlement: _gone, ...was }) => was);
/** The device may be off by more than it was listed with: judged by that from here on. */
function uncertaintyDeclared(state, event) {
	const { tool, permissibleDeviation, window, firstWindow } = event;
	return {
		...state,
		windowsConfirmed: false,
		instruments: state.instruments.map((one) => one.id === tool ? {
			...one,
			permissibleDeviation,
			promiseOfDevice: true
		} : one),
		...window.unit === "mm" ? { gapWindow: window } : { torqueWindow: window },
		...firstWindow === null ? {} : { basis: {
			...state.basis,
			firstTorqueWindow: firstWindow
		} }
	};
}
/** A plug is backed off to start again: what it had proven counts no more, and it is due at once. */
function restarted(state, { cylinder, newPlug }) {
	const back = withCylinder(unsettled(newPlug ? withNewPlug(state, cylinder) : state, cylinder), cylinder, (was) => ({
		...was,
		restartedAfter: state.pullCount
	}));
	return {
		...retighten(back),
		refitting: cylinder,
		chosen: {
			...state.chosen,
			torque: cylinder
		}
	};
}
/** The cylinder that is due: the one a person chose, while it is open, else the first open one in service order. */
function retarget(state) {
	const due = (step, chosen) => {
		const open = state.cylinders.filter((c) => !isOver(c[step]));
		return (open.find((c) => c.cylinder === chosen) ?? open[0])?.cylinder ?? null;
	};
	return {
		...state,
		gapTarget: due("gap", state.chosen.length),
		torqueTarget: due("torque", state.chosen.torque),
		oldPlugTarget: oldPlugDue(state)
	};
}

// src/job/proof.ts
function proofOf(state) {
	const by = state.cylinders.flatMap((c) => [...gapSource(c) === "typed" ? c.gaps : [], ...torqueSource(c, isTwoSteps(state)) === "typed" ? countingPulls(c).map(({ pull: { source }, ...rest }) => ({
		source,
		...rest
	})) : []]).flatMap(({ source, judgement, technician }) => source === "typed" && judgement?.result === "OK" ? [technician] : []);
	return {
		sources: state.sources,
		figures: figuresOf(state),
		attestedBy: [...new Set(by)]
	};
}
/** Tightened in two steps: what a cylinder stands on are two pulls. */
const isTwoSteps = ({ basis }) => basis.firstTorqueWindow !== null;
function figuresOf(state) {
	return {
		torque: counted(state.cylinders.map((c) => torqueSource(c, isTwoSteps(state)))),
		gap: counted(state.cylinders.map(gapSource))
	};
}
function counted(sources) {
	const of = (wanted) => sources.filter((source) => source === wanted).length;
	return {
		linked: of("linked"),
		typed: of("typed"),
		replayed: of("replayed"),
		simulated: of("simulated")
	};
}
/** Where the gap that a cylinder stands on came from; null where it stands on none. */
function gapSource({ gap, gaps }) {
	return gap === "done" ? gaps.findLast(({ judgement }) => judgement.result === "OK")?.source ?? null : null;
}
/** Where the torque that a cylinder stands on came from; of two steps the weaker one. Null where it stands on none. */
function torqueSource(c, twoSteps) {
	if (c.torque !== "done") return null;
	const proofs = countingPulls(c).filter(isOk);
	const last = proofs.at(-1)?.pull.source ?? null;
	return twoSteps ? weakest(proofs.map(({ pull }) => pull.source)) : last;
}
const isOk = ({ judgement }) => judgement?.result === "OK";
const FROM_WEAKEST = [
	"simulated",
	"replayed",
	"typed",
	"linked"
];
const weakest = (sources) => FROM_WEAKEST.find((source) => sources.includes(source)) ?? null;

// src/pull/trace.ts
function putVarint(out, value) {
	let rest = value < 0 ? -2 * value - 1 : 2 * value;
	while (rest >= 128) {
		out.push(rest % 128 + 128);
		rest = Math.floor(rest / 128);
	}
	out.push(rest);
}
/** Codes at least one sample; times must not fall. */
function encodeSamples(samples) {
	const startUs = samples.atUs[0];
	if (startUs === void 0) throw new RangeError("no samples to code");
	const times = [];
	const counts = [];
	let lastAt = startUs;
	let lastStep = 0;
	let lastCount = 0;
	samples.atUs.forEach((at, i) => {
		if (i > 0) {
			putVarint(times, at - lastAt - lastStep);
			lastStep = at - lastAt;
			lastAt = at;
		}
		const count = samples.counts[i] ?? 0;
		putVarint(counts, count - lastCount);
		lastCount = count;
	});
	const text = (bytes) => Buffer.from(bytes).toString("base64");
	return {
		count: samples.atUs.length,
		startUs,
		times: text(times),
		counts: text(counts)
	};
}
function varints(text, expected, where) {
	const bad = (message) => err(problem(where, message));
	const bytes = Buffer.from(text, "base64");
	if (bytes.toString("base64") !== text) return bad("expected base64 without breaks or spare bits");
	const out = [];
	let value = 0;
	let scale = 1;
	for (let offset = 0; offset < bytes.length; offset++) {
		const byte = bytes[offset] ?? 0;
		value += (byte & 127) * scale;
		scale *= 128;
		if (value > Number.MAX_SAFE_INTEGER) return bad(`byte ${offset}: the integer is too large`);
		if (byte < 128) {
			if (byte === 0 && scale > 128) return bad(`byte ${offset}: expected the shortest form of the integer`);
			out.push(value % 2 === 0 ? value / 2 : -(value + 1) / 2);
			value = 0;
			scale = 1;
		}
	}
	if (scale !== 1) return bad("the last integer is cut off");
	if (out.length !== expected) return bad(`expected ${expected} integers, found ${out.length}`);
	return ok(out);
}
function problem(where, message) {
	return {
		code: "samples-unreadable",
		where,
		message,
		next: "The record is damaged here; ask for another copy."
	};
}
/** The samples back, or the place where the coding is broken. Accepts only what {@link encodeSamples} would write. */
function decodeSamples(coded) {
	const steps = varints(coded.times, coded.count - 1, "times");
	if (!steps.ok) return steps;
	const differences = varints(coded.counts, coded.count, "counts");
	if (!differences.ok) return differences;
	const atUs = [coded.startUs];
	let at = coded.startUs;
	let step = 0;
	for (const change of steps.value) {
		step += change;
		if (step < 0) return err(problem("times", `sample ${atUs.length + 1} lies before the one in front of it`));
		at += step;
		atUs.push(at);
	}
	let count = 0;
	const counts = differences.value.map((difference) => {
		count += difference;
		return count;
	});
	return ok({
		atUs,
		counts
	});
}

// src/job/bench-state.ts
/** What the bench holds from one input to the next, and the events that the present input has led to so far. */
var BenchState = class {
	feeds = /* @__PURE__ */ new Map();
	/** Pulls before this session: their times are on another clock. */
	pullsBefore = 0;
	/** A stroke that may be on the way, or the last one. */
	stroke = null;
	#job;
	#events = [];
	constructor(opened) {
		this.#job = opened;
	}
	state = () => this.#job;
	emit = (event) => {
		const logged = asLogged(event);
		this.#events.push(logged);
		this.#job = fold(this.#job, logged);
	};
	/** Runs one input; gives the events that it led to, in order. */
	eventsOf(input) {
		this.#events = [];
		input();
		return this.#events;
	}
	/** Samples that wait in memory become an event. */
	flush(tool, feed) {
		if (feed.atUs.length === 0) return;
		const coded = encodeSamples(feed);
		this.emit({
			type: "readings",
			tool,
			first: feed.first,
			...coded
		});
		feed.atUs = [];
		feed.counts = [];
	}
	flushAll() {
		for (const [tool, feed] of this.feeds) this.flush(tool, feed);
	}
	pulling() {
		return [...this.feeds.values()].some((feed) => feed.detector.live().pulling);
	}
};
/**
* As the log gives it back: JSON knows no minus zero, and an event must be the same before it was written and after. Samples
* are whole numbers and text, and by far the most of it.
*/
function asLogged(event) {
	return event.type === "readings" ? event : JSON.parse(JSON.stringify(event));
}

// src/job/command-event.ts
/** The event that a command is; null where the rules have more to say about it. */
function eventOf(command) {
	switch (command.do) {
		case "choose-cylinder": return {
			type: "cylinder-chosen",
			quantity: command.quantity,
			cylinder: command.cylinder
		};
		case "start-again": {
			const { cylinder, newPlug, why } = command;
			return {
				type: "cylinder-restarted",
				cylinder,
				newPlug,
				why
			};
		}
		case "gap-inspected": return {
			type: "gap-inspected",
			cylinder: command.cylinder,
			sound: command.sound
		};
		case "scrap-plug": return {
			type: "plug-scrapped",
			cylinder: command.cylinder,
			reason: command.reason
		};
		case "confirm-windows": return { type: "windows-confirmed" };
		case "attest": return {
			type: "steps-attested",
			phase: command.phase,
			steps: command.steps
		};
		case "read-old-plugs": {
			const { do: _do, ...fields } = command;
			return {
				type: "old-plugs-read",
				...fields
			};
		}
		case "check-new-plugs": {
			const { do: _do, ...fields } = command;
			return {
				type: "new-plugs-checked",
				...fields
			};
		}
		case "fit-by-angle": {
			const { cylinder, turn, why } = command;
			return {
				type: "fitted-by-angle",
				cylinder,
				turn,
				why
			};
		}
		case "hand-over": return {
			type: "job-handed-over",
			to: command.to
		};
		case "void": return {
			type: "job-voided",
			by: command.by,
			reason: command.reason
		};
		case "answer":
		case "accept":
		case "give-pull":
		case "left-out":
		case "gap-wire":
		case "close": return null;
	}
}
/** The command that led to an event; null for an event that no command leads to. */
function commandOf(event) {
	switch (event.type) {
		case "cylinder-chosen": return {
			do: "choose-cylinder",
			quantity: event.quantity,
			cylinder: event.cylinder
		};
		case "cylinder-restarted": {
			const { cylinder, newPlug, why } = event;
			return {
				do: "start-again",
				cylinder,
				newPlug,
				why
			};
		}
		case "gap-inspected": return {
			do: "gap-inspected",
			cylinder: event.cylinder,
			sound: event.sound
		};
		case "plug-scrapped": return {
			do: "scrap-plug",
			cylinder: event.cylinder,
			reason: event.reason
		};
		case "windows-confirmed": return { do: "confirm-windows" };
		case "steps-attested": return {
			do: "attest",
			phase: event.phase,
			steps: event.steps
		};
		case "old-plugs-read": {
			const { type: _type, ...fields } = event;
			return {
				do: "read-old-plugs",
				...fields
			};
		}
		case "new-plugs-checked": {
			const { type: _type, ...fields } = event;
			return {
				do: "check-new-plugs",
				...fields
			};
		}
		case "fitted-by-angle": {
			const { cylinder, turn, why } = event;
			return {
				do: "fit-by-angle",
				cylinder,
				turn,
				why
			};
		}
		case "job-handed-over": return {
			do: "hand-over",
			to: event.to
		};
		case "job-voided": return {
			do: "void",
			by: event.by,
			reason: event.reason
		};
		case "question-answered": return {
			do: "answer",
			pull: event.pull,
			answer: event.answer
		};
		case "pull-accepted": return {
			do: "accept",
			pull: event.pull,
			by: event.by,
			reason: event.reason
		};
		case "pull-given": return {
			do: "give-pull",
			pull: event.pull,
			cylinder: event.cylinder,
			why: event.why
		};
		case "cylinder-left-out": {
			const { pull, cylinder, on, why } = event;
			return {
				do: "left-out",
				pull,
				cylinder,
				on,
				why
			};
		}
		case "wire-tried": return {
			do: "gap-wire",
			cylinder: event.cylinder,
			outcome: event.outcome
		};
		case "job-closed": return { do: "close" };
		default: return null;
	}
}

// src/metrology/interval.ts
/**
* Holds an interval against a window. OK when all of it lies in the acceptance zone, NotOK when all of it lies beyond the
* limits by the guard band, else NotDecidable. The probability takes every value of the interval as equally likely; an
* open side ends at 0 and at twice the upper limit. `value` is the middle, or the one bound that is known.
*/
function judgeInterval({ lower, upper }, window) {
	const { lowerLimit, upperLimit, acceptLower, acceptUpper, expandedAtUpper } = window;
	const from = lower ?? 0;
	const to = upper ?? Math.max(2 * upperLimit, 2 * from);
	if (!(from >= 0 && from < to)) throw new RangeError(`the interval ${from} to ${to} holds nothing`);
	const value = lower === null || upper === null ? lower ?? upper ?? 0 : (from + to) / 2;
	const inside = Math.max(0, Math.min(to, upperLimit) - Math.max(from, lowerLimit)) / (to - from);
	const proven = lower !== null && upper !== null && order(lower, acceptLower) >= 0 && order(upper, acceptUpper) <= 0;
	const below = upper !== null && order(upper, lowerLimit - (acceptLower - lowerLimit)) <= 0;
	const above = lower !== null && order(lower, upperLimit + (upperLimit - acceptUpper)) >= 0;
	const middle = (acceptLower + acceptUpper) / 2;
	return {
		result: proven ? "OK" : below || above ? "NotOK" : "NotDecidable",
		side: proven ? "inside" : lower === null || upper !== null && value < middle ? "low" : "high",
		grade: proven ? "pass" : below || above ? "fail" : inside > .5 ? "conditional-pass" : "conditional-fail",
		value,
		expandedUncertainty: lower === null || upper === null ? expandedAtUpper : (to - from) / 2 + expandedAtUpper,
		conformanceProbability: inside
	};
}
/** Expanded uncertainty of a bound known within ±`within`: rectangular, so 2·within/√3. */
const expandedWithin = (within) => 2 * within / Math.sqrt(3);

// src/job/judging.ts
/** A reading of one of the job's instruments held against a window. */
function judgedReading(state, tool, reading, window, peakStandard) {
	const { basis, order } = state;
	const circumstances = {
		on: basis.on,
		adapter: order.adapter
	};
	return judgedBy({
		instrument: instrumentOf(state, tool),
		circumstances,
		window,
		rule: basis.decision.rule
	}, reading, peakStandard);
}
/**
* A reading judged with the budget of that very reading: a pull whose peak is known less well than the window allows for
* has wider guard bands, never narrower ones.
*/
function judgedBy({ instrument, circumstances, window, rule }, reading, peakStandard) {
	const { value, budget } = measured(instrument, reading, circumstances, peakStandard);
	return roundedJudgement(judge(value, budget.expanded, windowForUncertainty(rule, window, budget.expanded)));
}
/** A probability is never told as a certainty. */
const [LEAST, MOST$1] = [1e-6, .999999];
/** A judgement, decided on all digits, with those that mean something. */
function roundedJudgement(judgement) {
	return {
		...judgement,
		value: rounded(judgement.value, 6),
		expandedUncertainty: Number(judgement.expandedUncertainty.toPrecision(6)),
		conformanceProbability: Math.min(MOST$1, Math.max(LEAST, rounded(judgement.conformanceProbability, 6)))
	};
}
/** The window for a reading of that expanded uncertainty. */
function windowForUncertainty(rule, window, expanded) {
	const { unit, lowerLimit, upperLimit, expandedAtLower, expandedAtUpper } = window;
	if (expanded <= Math.max(expandedAtLower, expandedAtUpper)) return window;
	return windowBy(rule, {
		unit,
		lowerLimit,
		upperLimit,
		expandedAt: () => expanded
	});
}
/** What a pair of wires told of a gap. */
function judgedWires({ order, gapWindow }, outcome) {
	if (gapWindow === null) throw new Error("the gap of this job is not measured");
	return judgeInterval(wireInterval(outcome, orThrow(wiresOf(order.specification))), gapWindow);
}
/**
* What follows when a device publishes an uncertainty of its own: null where there is a certificate, or where the listing
* allows for as much. Else the wider one holds from here on, and the windows shrink.
*/
function declared(state, tool, { uncertainty, exponent, quantity }) {
	const instrument = state.instruments.find(({ id }) => id === tool);
	const { torqueWindow, gapWindow, basis, order } = state;
	const window = quantity === "torque" ? torqueWindow : gapWindow;
	if (instrument === void 0 || window === null || uncertainty === void 0) return null;
	const listed = instrument.permissibleDeviation;
	if (instrument.certificate !== void 0 || listed === void 0) return null;
	const permissibleDeviation = uncertainty.kind === "relative" ? {
		kind: "relative",
		percent: uncertainty.percent
	} : {
		kind: "absolute",
		amount: scaled(uncertainty.counts, quantity === "torque" ? exponent : exponent + 3)
	};
	const at = window.upperLimit;
	if (!(permissibleAt(permissibleDeviation, at) > permissibleAt(listed, at))) return null;
	const wider = {
		...instrument,
		permissibleDeviation
	};
	const circumstances = {
		on: basis.on,
		adapter: order.adapter
	};
	const again = ({ lowerLimit: lower, upperLimit: upper }) => windowFor(wider, {
		lower,
		upper
	}, circumstances, basis.decision.rule);
	const { firstTorqueWindow: first } = basis;
	return {
		type: "uncertainty-declared",
		tool,
		permissibleDeviation,
		window: again(window),
		firstWindow: quantity === "torque" && first !== null ? again(first) : null
	};
}
function instrumentOf(state, tool) {
	const instrument = state.instruments.find(({ id }) => id === tool);
	if (instrument === void 0) throw new Error(`${tool} is not an instrument of this job`);
	return instrument;
}

// src/sequence/coefficients.ts
/** Fitted by `npm run bench -- fit-kinds scenes=500`: see shape.ts. Not to be edited by hand. */
/** Log odds of a plug that turned against one that stood; terms of `turnedTerms`. */
const TURNED = [
	-133.1529,
	27.1134,
	68.491
];
/** Log odds of a knock against a low stroke; terms of `knockTerms`. */
const KNOCK = [
	65.6148,
	-10.4611,
	-.6906,
	-1.0551,
	-3.5221,
	-44.8052,
	-23.2235
];

// src/sequence/shape.ts
const LEAST_MS = 1;
function shapeFeatures(pull) {
	const at = (tenth) => pull.rise.reachedMs[tenth - 1] ?? 0;
	const lower = Math.max(LEAST_MS, at(5) - at(2));
	const upper = Math.max(LEAST_MS, at(8) - at(5));
	const length = Math.max(LEAST_MS, (pull.endUs - pull.startUs) / 1e3);
	const up = Math.max(LEAST_MS, (pull.peakUs - pull.startUs) / 1e3);
	const down = Math.max(LEAST_MS, (pull.endUs - pull.peakUs) / 1e3);
	return {
		rise: Math.log(lower + upper),
		bend: Math.log(lower / upper),
		length: Math.log(length),
		fall: Math.log(down / up),
		atTop: Math.log(Math.max(LEAST_MS, up - at(5)) / length)
	};
}
/** Terms of the models, in the order of their coefficients. */
const turnedTerms = ({ rise, bend }) => [
	1,
	rise,
	bend
];
const knockTerms = ({ length, fall, atTop }) => [
	1,
	length,
	length * length,
	fall,
	fall * fall,
	atTop,
	atTop * atTop
];
/** Probability that the plug turned from where fingers left it, and was not one that stood still. */
const turnedProbability = (pull) => logistic(dot(TURNED, turnedTerms(shapeFeatures(pull))));
/** Probability that a low pull was a knock and not a stroke. */
const knockProbability = (pull) => logistic(dot(KNOCK, knockTerms(shapeFeatures(pull))));
/**
* Milliseconds from 20 to 80 % of a torque below the first top. A plug that held that torque already lets it rise as
* fast as the wrench bends, whatever comes beyond.
*/
const riseToMs = (pull, heldNm) => reachedMs(pull, .8 * heldNm) - reachedMs(pull, .2 * heldNm);
/** Outside of these there is too little of a rise, below or beyond, to tell a pace from. */
const TOO_LITTLE_HELD = .3;
const TOO_NEAR_TOP = .85;
/**
* How much slower the torque rose beyond what the plug had held than up to there: about 1 on a plug that stands still,
* more on one that turns on. Null where it had held nearly all of it, or too little.
*/
function slowdown(pull, heldNm) {
	const topNm = topOf(pull);
	if (heldNm < TOO_LITTLE_HELD * topNm || heldNm > TOO_NEAR_TOP * topNm) return null;
	const below = riseToMs(pull, heldNm) / (.6 * heldNm);
	return (reachedMs(pull, .9 * topNm) - reachedMs(pull, heldNm)) / (.9 * topNm - heldNm) / Math.max(below, LEAST_MS / topNm);
}
const topOf = (pull) => Math.abs(pull.releaseNm ?? pull.peakNm);
/** When a torque was first reached, between the tenths of the first top that the pull tells. */
function reachedMs(pull, nm) {
	const tenths = Math.min(9, Math.max(0, 10 * nm / topOf(pull)));
	const below = Math.floor(tenths);
	const from = below === 0 ? 0 : pull.rise.reachedMs[below - 1] ?? 0;
	const to = pull.rise.reachedMs[below] ?? from;
	return from + (tenths - below) * (to - from);
}
const logistic = (score) => 1 / (1 + Math.exp(-score));
function dot(coefficients, terms) {
	return terms.reduce((sum, term, i) => sum + term * (coefficients[i] ?? 0), 0);
}

// src/sequence/evidence.ts
/** The evidence in a pull. Probabilities are rounded: two machines must print the same. */
function evidenceOf(pull, sinceLastMs, heldNm) {
	const top = Math.abs(pull.releaseNm ?? pull.peakNm);
	const slower = slowdown(pull, heldNm);
	return {
		riseNmPerS: rounded(600 * top / Math.max(1, pull.riseMs), 1),
		bend: rounded(shapeFeatures(pull).bend, 3),
		impulseNms: rounded(pull.rise.impulseNms, 3),
		workJ: pull.turn === null ? null : rounded(pull.turn.workJ, 3),
		angleDeg: pull.turn === null ? null : rounded(pull.turn.startToPeakDeg, 1),
		sinceLastMs: sinceLastMs === null ? null : Math.round(sinceLastMs),
		heldRiseMs: heldNm > 0 ? rounded(riseToMs(pull, heldNm), 1) : null,
		slowdown: slower === null ? null : rounded(slower, 2),
		turned: rounded(turnedProbability(pull), 6),
		knock: rounded(knockProbability(pull), 6)
	};
}

// src/sequence/place.ts
/** Below this share of the lower limit nothing was tightened. Common practice, no source. */
const HANDLING_BELOW = .2;
/** A stroke that ends below this share of the lower limit may be a knock. Assumption. */
const KNOCK_BELOW = .9;
/** Nobody takes the wrench to another plug in less; what comes sooner is on the plug before. Assumptions, no source. */
const SURELY_SAME_MS = 800;
const SAME_PLUG_MS = 2e3;
/** Long enough for a look at the screen and another try. Assumption. */
const LOOKED_MS = 1200;
/** A stroke that nothing followed for so long was the last one: it stopped short. Assumption. */
const SETTLED_MS = 2500;
/** A plug holds what it was pulled to: a later stroke that ends below this share of it was on another one. */
const HELD_SHARE = .9;
/**
* And it rises to there like a spring: within this time from 20 to 80 %, for a torque of the lower limit. Simulated plugs
* took up to 105 ms, others from 195 ms.
*/
const SPRING_MS = 140;
/** Beyond it, it turns, and the torque rises slower by so much. Simulated: 2.0 and more; plugs that stood, up to 2.2. */
const TURNS_ON = 2.3;
/** What may be believed without asking. Chosen on simulated pulls: none on a tight plug came above (tests/bench/kinds). */
const SURE_TURNED = .98;
const KNOCK_AT = .5;
const SURELY_KNOCK = .98;
/** No stroke that turns a plug is over so soon. Assumption. */
const MOMENT_US = 3e5;
/** A stroke before that is less surely a stroke than this does not speak for the one after it. */
const SURELY_STROKE = .02;
/** Gives a pull to a cylinder, or asks. */
function place(pull, at) {
	const pauseMs = at.last === null ? null : Math.max(0, pull.startUs - at.last.endUs) / 1e3;
	const evidence = evidenceOf(pull, pauseMs, at.startedNm);
	return {
		...decide({
			pull,
			at,
			pauseMs,
			evidence
		}),
		evidence
	};
}
/** A pull that rose slower than a wrench on a plug that stands still, whatever it ended at. */
function surelyTurned(pull, evidence, lowerNm) {
	return (evidence?.turned ?? 0) >= SURE_TURNED || pull.riseMs > springMs(pull.peakNm, lowerNm);
}
const springMs = (nm, lowerNm) => SPRING_MS * nm / lowerNm;
/** A stroke that was taken to be on the way, once nothing followed it. `short`: the cylinder had stopped short before. */
function settle(pull, cylinder, evidence, at) {
	const withEvidence = evidence === void 0 ? {} : { evidence };
	const nobody = {
		cylinder: null,
		kind: "handling",
		...withEvidence
	};
	if (pull.peakNm < HANDLING_BELOW * at.lowerNm) return {
		...nobody,
		because: "too-little-torque"
	};
	const knock = pull.peakNm < KNOCK_BELOW * at.lowerNm ? evidence?.knock ?? 0 : 0;
	if (knock >= SURELY_KNOCK) return {
		...nobody,
		because: "knock"
	};
	if (knock > SURELY_STROKE) return {
		...asks("which", cylinder, "knock-or-short"),
		...withEvidence
	};
	if (pull.peakNm >= at.lowerNm) return {
		...asks("no-click", cylinder, "no-click-and-nothing-followed"),
		...withEvidence
	};
	return {
		cylinder,
		kind: at.short ? "continuation" : "tightening",
		because: "stopped-short",
		...withEvidence
	};
}
/**
* A placement as it may stand, whoever made it: readings at the end of the scale prove no plug, nor does a pull whose end
* is missing, wherever they are given to.
*/
function asProven(pull, placement) {
	const { cylinder, kind, evidence } = placement;
	const because = evidence === void 0 ? {} : { evidence };
	if (pull.cut !== null && cylinder !== null && (kind === "tightening" || kind === "continuation")) return {
		...asks("cut", cylinder, "end-missing"),
		...because
	};
	if (!pull.saturated || cylinder === null || kind === "loosening" || kind === "unsure") return placement;
	return {
		...beyondScale(cylinder),
		...because
	};
}
function decide(one) {
	const { pull, at } = one;
	const subject = at.asking ?? at.target ?? at.lastTight;
	if (nothingTurned(one)) return {
		cylinder: null,
		kind: "handling",
		because: "too-little-torque"
	};
	if (pull.peakNm < 0) return loosening(at);
	if (subject === null) return {
		cylinder: null,
		kind: "handling",
		because: "none-due"
	};
	const again = justTightened(one);
	if (pull.saturated) return beyondScale(again ?? subject);
	if (pull.cut !== null) return asks("cut", subject, "end-missing");
	if (again !== null) return sameAgain(one, again);
	if (at.last?.asked != null && soon(one)) return asks(at.last.asked, at.last.cylinder, "went-on-from-question");
	const low = endedLow(one);
	if (at.asking !== null) return meanwhile(one, subject, low);
	if (at.target === null) return afterAll(one, subject);
	return low ? lowStroke(one, at.target) : reached(one, at.target);
}
/** Too little even for a stroke on the way, unless it might be the first of several. */
function nothingTurned({ pull, at, evidence }) {
	if (Math.abs(pull.peakNm) >= HANDLING_BELOW * at.lowerNm) return false;
	const momentary = evidence.knock >= KNOCK_AT || pull.endUs - pull.startUs < MOMENT_US;
	return pull.peakNm < 0 || at.target === null || at.asking !== null || momentary;
}
/** A click wrench that was let off within the window without a click was not done yet. */
function endedLow({ pull, at }) {
	if (pull.peakNm < at.lowerNm) return true;
	return at.clicks && pull.release === "none" && pull.peakNm <= at.upperNm;
}
/** While a question is open. */
function meanwhile(one, asking, low) {
	if (low) return {
		cylinder: null,
		kind: "run-down",
		because: "low-during-question"
	};
	return asking === one.at.target && one.at.started === null && one.evidence.turned < .5 ? asks("already-tight", asking, "did-not-turn") : asks("held", asking, "during-question");
}
/** The cylinder of a pull that reached the window a moment ago; null where there was none. */
function justTightened({ at: { last }, pauseMs }) {
	return last?.tight === true && pauseMs !== null && pauseMs < SAME_PLUG_MS ? last.cylinder : null;
}
/** At once after a pull that reached the window. */
function sameAgain(one, cylinder) {
	const { at } = one;
	const pauseMs = one.pauseMs ?? 0;
	if (pauseMs >= LOOKED_MS && at.lastOpen) return asks("already-tight", at.target ?? cylinder, "did-not-turn");
	if (pauseMs >= SURELY_SAME_MS && one.evidence.turned > .5) return asks("which", at.target ?? cylinder, "turned-too-soon");
	return {
		cylinder,
		kind: "rehit",
		because: "same-plug-again"
	};
}
function lowStroke(one, target) {
	const { pull, at, evidence } = one;
	if (pull.peakNm < KNOCK_BELOW * at.lowerNm && evidence.knock >= SURELY_KNOCK) return {
		cylinder: null,
		kind: "handling",
		because: "knock"
	};
	if (at.started !== null && !soon(one)) {
		const other = otherPlug(one);
		if (other !== null) return asks("other-plug", target, other);
	}
	return {
		cylinder: target,
		kind: "run-down",
		because: pull.peakNm < at.lowerNm ? "ended-low" : "ended-without-click"
	};
}
function reached(one, target) {
	const { at, evidence } = one;
	if (at.started === "stroke" && soon(one)) {
		if (at.startedTurning && (at.last?.knock ?? 1) <= SURELY_STROKE || evidence.turned >= SURE_TURNED || (evidence.slowdown ?? 0) >= TURNS_ON) return {
			cylinder: target,
			kind: "tightening",
			because: "went-on-from-stroke"
		};
		const ask = evidence.turned < .5 ? "already-tight" : "which";
		return asks(ask, target, "stroke-before-in-doubt");
	}
	if (at.started !== null) {
		const other = otherPlug(one) ?? stoodStill(one);
		if (other !== null) return asks("other-plug", target, other);
		return {
			cylinder: target,
			kind: "continuation",
			because: "went-on-after-short"
		};
	}
	if (evidence.turned >= SURE_TURNED) return {
		cylinder: target,
		kind: "tightening",
		because: "plug-turned"
	};
	if (evidence.turned < .5) return asks("already-tight", target, "did-not-turn");
	if (at.lastTight === null) return {
		cylinder: target,
		kind: "tightening",
		because: "first-plug"
	};
	return asks("which", target, "tight-or-turning");
}
/** Why this was not the plug that had stopped short; null when it may have been. */
function otherPlug({ pull, at, evidence }) {
	if (pull.peakNm < HELD_SHARE * at.startedNm) return "below-held";
	return (evidence.heldRiseMs ?? 0) > springMs(at.startedNm, at.lowerNm) ? "slow-to-held" : null;
}
/** Why the plug may have been a tight one, and not one that went on to turn; null when it surely turned on. */
function stoodStill({ evidence: { slowdown } }) {
	if (slowdown !== null && slowdown >= TURNS_ON) return null;
	return slowdown === null ? "maybe-tight" : "did-not-turn-on";
}
/** Every cylinder is done. */
function afterAll(one, lastTight) {
	const { pull, at, evidence } = one;
	if (pull.peakNm < KNOCK_BELOW * at.lowerNm && evidence.knock >= KNOCK_AT) return {
		cylinder: null,
		kind: "handling",
		because: "knock"
	};
	if (evidence.turned >= .5 || pull.riseMs > springMs(pull.peakNm, at.lowerNm)) return asks("loose", lastTight, "turned-though-all-done");
	if (pull.peakNm > at.upperNm) return asks("held", lastTight, "check-above-window");
	return {
		cylinder: at.chosen,
		kind: "check",
		because: "tight-plug-again"
	};
}
const beyondScale = (cylinder) => asks("end-of-scale", cylinder, "end-of-scale");
const soon = ({ pauseMs }) => pauseMs !== null && pauseMs < 2500;
function loosening(at) {
	if (at.refitting !== null) return {
		cylinder: at.refitting,
		kind: "loosening",
		because: "to-be-backed-out"
	};
	if (at.lastTight === null) return {
		cylinder: null,
		kind: "loosening",
		because: "none-tight-yet"
	};
	return asks("loosened", at.lastTight, "loosened-after-proof");
}
const asks = (ask, cylinder, because) => ({
	cylinder,
	kind: "unsure",
	ask,
	because
});

// src/job/stage.ts
/** The stage at which the next pull on a cylinder finds its plug. */
function stageOf({ basis, cylinders }, cylinder) {
	if (basis.firstTorqueWindow === null) return "final";
	const c = cylinders.find((one) => one.cylinder === cylinder);
	return c === void 0 ? "first" : stageThrough(c);
}
const stageThrough = (c) => countingPulls(c).reduce(stageAfter, "first");
/** The cylinder whose plug has to be loosened before its last step; null for none. */
function toBeLoosened(state) {
	if (state.basis.firstTorqueWindow === null) return null;
	return state.cylinders.find((c) => !isOver(c.torque) && stageThrough(c) === "loosen")?.cylinder ?? null;
}
/** The window of the next pull on a cylinder. */
function torqueWindowOf(state, cylinder) {
	return windowAt(state, stageOf(state, cylinder));
}
function windowAt({ basis, torqueWindow }, stage) {
	return stage === "final" ? torqueWindow : basis.firstTorqueWindow ?? torqueWindow;
}

// src/job/situation.ts
/** The pull of that number and where it stands. */
function attemptOf(state, pull) {
	return placedPulls(state).find((attempt) => attempt.pull.pull === pull);
}
function placedPulls({ cylinders, strays }) {
	return [...cylinders.flatMap(({ cylinder, pulls }) => pulls.map((attempt) => ({
		...attempt,
		cylinder
	}))), ...strays.map((attempt) => ({
		...attempt,
		cylinder: null
	}))].sort((a, b) => a.pull.pull - b.pull.pull);
}
/** `pullsBefore`: pulls of earlier sessions, whose times are on another clock. */
function situation(state, pullsBefore) {
	const target = state.cylinders.find(({ cylinder }) => cylinder === state.torqueTarget);
	const { lowerNm, upperNm } = asWrenchReads(state, torqueWindowOf(state, state.torqueTarget));
	const started = target === void 0 ? [] : startedBy(target);
	const last = started.at(-1);
	return {
		target: state.torqueTarget,
		lastOpen: state.cylinders.filter(({ torque }) => !isOver(torque)).length === 1,
		started: last === void 0 ? null : last.kind === "run-down" && last.answer === null ? "stroke" : "short",
		startedNm: Math.max(0, ...started.map(({ pull }) => pull.peakNm)),
		startedTurning: started.some(({ pull, evidence }) => surelyTurned(pull, evidence, lowerNm)),
		last: lastPull(state, pullsBefore),
		refitting: refitting(state),
		lastTight: state.lastTight,
		asking: state.questions[0]?.cylinder ?? null,
		chosen: state.chosen.torque,
		clicks: state.instruments.some(({ type }) => type === "setting"),
		lowerNm,
		upperNm
	};
}
/** The pulls that a cylinder's plug has had since it was fitted and that did not bring it to the window. */
function startedBy(c) {
	const pulls = countingPulls(c);
	const fitted = pulls.findLastIndex(({ kind, answer }) => kind === "loosening" || answer === "refit" || answer === "replace");
	const since = pulls.slice(fitted + 1).filter(({ kind }) => kind !== "rehit" && kind !== "check");
	return since.every(({ kind, judgement }) => kind === "run-down" || judgement?.side === "low") ? since : [];
}
/** A pull of this cylinder's plug in front of pull number `before` stopped short. */
function stoppedShort(state, cylinder, before) {
	const c = state.cylinders.find((one) => one.cylinder === cylinder);
	if (c === void 0) return false;
	const pulls = c.pulls.filter(({ pull }) => pull.pull < before);
	return startedBy({
		...c,
		pulls
	}).some(({ kind, answer }) => kind !== "run-down" || answer !== null);
}
function lastPull(state, pullsBefore) {
	const attempt = placedPulls(state).findLast(({ cylinder }) => cylinder !== null);
	if (attempt === void 0 || attempt.cylinder === null || attempt.pull.pull <= pullsBefore) return null;
	const { cylinder, kind, pull, evidence } = attempt;
	const ended = pull.release === "seen" || pull.cut !== null || pull.saturated;
	const open = kind === "unsure" && !ended && pull.peakNm > 0;
	const tight = kind !== "run-down" && kind !== "loosening" && pull.peakNm >= asWrenchReads(state, state.torqueWindow).lowerNm;
	return {
		cylinder,
		endUs: pull.endUs,
		tight: tight && !open,
		asked: open ? attempt.ask ?? null : null,
		knock: evidence?.knock ?? 0
	};
}
const COMES_OUT = /* @__PURE__ */ new Set([
	"over-window",
	"cut",
	"end-of-scale"
]);
/** The cylinder whose plug is to come out: as said, or as the question that is open asks for. */
function refitting(state) {
	const asked = state.questions.find(({ kind }) => COMES_OUT.has(kind));
	return state.refitting ?? asked?.cylinder ?? toBeLoosened(state);
}
/**
* The pulls at one grip of the wrench with the one given: the strokes on the way before it and the re-hits behind it on
* the same cylinder, each within the time in which nobody goes to another plug.
*/
function grip(state, number) {
	const placed = placedPulls(state);
	const one = placed[placed.findIndex(({ pull }) => pull.pull === number)];
	if (one === void 0) return [];
	const pulls = placed.filter(({ cylinder, kind }) => cylinder === one.cylinder && kind !== "handling");
	const here = pulls.findIndex(({ pull }) => pull.pull === number);
	if (here < 0) return [one];
	let from = here;
	while (from > 0 && pulls[from - 1]?.kind === "run-down" && together(pulls[from - 1], pulls[from])) from -= 1;
	let to = here;
	while (pulls[to + 1]?.kind === "rehit" && together(pulls[to], pulls[to + 1])) to += 1;
	return pulls.slice(from, to + 1);
}
function together(a, b) {
	if (a === void 0 || b === void 0) return false;
	const pauseUs = b.pull.startUs - a.pull.endUs;
	return pauseUs >= 0 && pauseUs < 1e3 * 2500;
}
/**
* Where the pulls belong if the plug of `cylinder` was passed over: from it on, those of each cylinder were on the next
* plug of the round, and the pull in question tried the plug `on` again. What a person gave to a cylinder stays there.
* Empty when that cannot be.
*/
function leftOut(state, { pull: question, cylinder, on }) {
	const asked = state.questions.find(({ pull }) => pull === question);
	const again = attemptOf(state, question);
	const from = state.cylinders.findIndex((c) => c.cylinder === cylinder);
	const to = state.cylinders.findIndex((c) => c.cylinder === asked?.cylinder);
	if (from < 0 || to <= from || again === void 0) return [];
	const round = state.cylinders.slice(from, to + 1).filter(({ pulls, settlement }) => settlement?.kind !== "by-angle" && !pulls.some(({ given }) => given === true));
	if (round[0]?.cylinder !== cylinder || round[0].pulls.length === 0) return [];
	const because = {
		because: "cylinder-left-out",
		leftOut: cylinder
	};
	return [...round.slice(0, -1).flatMap(({ pulls }, i) => pulls.map(({ pull, kind, ask, evidence }) => ({
		pull,
		cylinder: round[i + 1]?.cylinder ?? null,
		kind,
		...because,
		...ask === void 0 ? {} : { ask },
		...evidence === void 0 ? {} : { evidence }
	}))), {
		pull: again.pull,
		cylinder: on,
		kind: "check",
		...because
	}];
}

// src/job/placing.ts
/** A pull is given its place, and judged where there is anything to judge. */
function placed({ state, emit }, pull, wanted) {
	const placement = asProven(pull, wanted);
	emit({
		type: "pull-placed",
		pull: pull.pull,
		judgement: judgedPull(state(), pull, placement),
		...placement
	});
}
/** A person said where a pull was: the strokes before it and the re-hits behind it, all at one grip, go with it. */
function placedByHand(context, pull, placement) {
	const others = grip(context.state(), pull.pull).filter((other) => other.pull.pull !== pull.pull);
	placed(context, pull, placement);
	const { cylinder } = placement;
	for (const { pull: other, kind } of others) placed(context, other, {
		cylinder,
		kind,
		because: "with-other-pull",
		otherPull: pull.pull
	});
}
function judgedPull(state, pull, { kind, cylinder }) {
	if (kind === "run-down" || kind === "loosening" || kind === "handling" || kind === "unsure") return null;
	const judgement = judgedReading(state, pull.tool, pull.peakNm, torqueWindowOf(state, cylinder), pull.peakStandardNm);
	return (kind === "rehit" || kind === "check") && judgement.side !== "high" ? null : judgement;
}

// src/job/following.ts
/** Stands as the tool of a gap that was found by go/no-go wires; such a reading has a number, but no time of its own. */
const WIRES = "wire";
/** The command, and what the rules make of it. It must not be one that would be refused. */
function follow(context, command) {
	switch (command.do) {
		case "answer":
			answer(context, command);
			break;
		case "accept":
			accept(context, command);
			break;
		case "give-pull":
			give(context, command);
			break;
		case "left-out": {
			const { pull: number, cylinder, on, why } = command;
			context.emit({
				type: "cylinder-left-out",
				pull: number,
				cylinder,
				on,
				why
			});
			for (const { pull, ...placement } of leftOut(context.state(), command)) placed(context, pull, placement);
			break;
		}
		case "gap-wire":
			wires(context, command);
			break;
		case "close": {
			const open = openItems(context.state());
			context.emit({
				type: "job-closed",
				complete: open.length === 0,
				open
			});
		}
	}
}
function wires({ state, emit }, { cylinder, outcome }) {
	const judgement = judgedWires(state(), outcome);
	const tried = state().cylinders.find((c) => c.cylinder === cylinder)?.gaps.length ?? 0;
	emit({
		type: "wire-tried",
		cylinder,
		outcome
	});
	emit({
		type: "gap-measured",
		tool: WIRES,
		reading: tried + 1,
		atUs: 0,
		source: "typed",
		cylinder,
		judgement
	});
}
function accept({ state, emit }, { pull, by, reason }) {
	const question = state().questions.find((open) => open.pull === pull);
	if (question === void 0) return;
	emit({
		type: "pull-accepted",
		pull,
		cylinder: question.cylinder,
		by,
		reason
	});
}
function answer(context, { pull: number, answer: given }) {
	const question = context.state().questions.find((open) => open.pull === number);
	const attempt = attemptOf(context.state(), number);
	if (question === void 0 || attempt === void 0) return;
	context.emit({
		type: "question-answered",
		pull: number,
		answer: given
	});
	const because = "answered";
	const { pull } = attempt;
	const { cylinder } = question;
	const placeByHand = (placement) => placedByHand(context, pull, {
		...placement,
		because
	});
	switch (given) {
		case "fresh":
			placeByHand({
				cylinder,
				kind: stoppedShort(context.state(), cylinder, number) ? "continuation" : "tightening"
			});
			break;
		case "rehit":
			placeByHand({
				cylinder: context.state().lastTight ?? cylinder,
				kind: "rehit"
			});
			break;
		case "handling":
			placeByHand({
				cylinder: null,
				kind: "handling"
			});
			break;
		case "unfinished":
			placeByHand({
				cylinder,
				kind: "run-down"
			});
			break;
		case "refit":
		case "replace": if (question.kind === "loosened") placed(context, pull, {
			cylinder,
			kind: "loosening",
			because
		});
	}
}
function give(context, { pull: number, cylinder, why }) {
	const attempt = attemptOf(context.state(), number);
	if (attempt === void 0) return;
	context.emit({
		type: "pull-given",
		pull: number,
		cylinder,
		why
	});
	const { pull } = attempt;
	const proven = context.state().cylinders.some((c) => c.cylinder === cylinder && torqueStep(c, {
		...context.state(),
		questions: []
	}) === "done");
	const short = stoppedShort(context.state(), cylinder, number);
	const kind = pull.peakNm < 0 ? "loosening" : proven ? "check" : short ? "continuation" : "tightening";
	placedByHand(context, pull, {
		cylinder,
		kind,
		because: "given"
	});
}

// src/job/refusal.ts
/** Why a command cannot be carried out now, in one sentence; null when it can. */
function refused(state, command, pulling) {
	if (command.do === "void") return notVoidable(state);
	if (state.closed !== null) return "The job is closed.";
	const cylinder = "cylinder" in command ? command.cylinder : null;
	if (cylinder !== null && !state.cylinders.some((c) => c.cylinder === cylinder)) return `This engine has no cylinder ${cylinder}.`;
	switch (command.do) {
		case "close": return pulling ? "A pull is under way." : null;
		case "hand-over": return command.to === state.technician && !isWithheld(command.to) ? `${command.to} works on this job already.` : null;
		case "choose-cylinder": return command.quantity === "torque" && pulling ? "A pull is under way. It belongs to the cylinder that was due." : null;
		case "answer": return wrongAnswer(state, command.pull, command.answer);
		case "give-pull": return attemptOf(state, command.pull) === void 0 ? `There is no pull ${command.pull}.` : null;
		case "left-out": return notLeftOut(state, command);
		case "gap-inspected": return gapCheckOf(state.order.specification) === "visual-only" ? null : "This job does not check the gap by eye.";
		case "gap-wire": return gapCheckOf(state.order.specification) === "wire" ? null : "This job does not check the gap by wire.";
		case "scrap-plug": return pulling ? "A pull is under way." : null;
		case "start-again":
			if (pulling) return "A pull is under way.";
			return state.questions.length > 0 ? "Answer the open question first." : null;
		case "confirm-windows": return state.windowsConfirmed ? "The windows are already confirmed." : null;
		case "attest": return notAttestable(state, command);
		case "read-old-plugs": return state.routine?.oldPlugs === true ? strangers(state, command.cylinders) : "This job does not record old plugs.";
		case "check-new-plugs": return notCheckable(state, command);
		case "fit-by-angle":
			if (pulling) return "A pull is under way.";
			return state.cylinders.some((c) => c.cylinder === command.cylinder && c.torque === "done") ? `Cylinder ${command.cylinder} is proven by torque.` : null;
		case "accept": return notAcceptable(state, command.pull);
	}
}
function notAcceptable(state, pull) {
	const question = state.questions.find((open) => open.pull === pull);
	if (question?.kind !== "over-window") return `No question about a pull over the window is open for pull ${pull}.`;
	const c = state.cylinders.find(({ cylinder }) => cylinder === question.cylinder);
	if (c === void 0 || !stillFitted(c, pull)) return "This plug was taken out since. It can no longer be left as it was.";
	return stageOf(state, question.cylinder) === "final" ? null : "Only the final torque can be left as it is.";
}
function strangers(state, cylinders) {
	const stranger = cylinders.find((wanted) => !state.cylinders.some(({ cylinder }) => cylinder === wanted));
	return stranger === void 0 ? null : `This engine has no cylinder ${stranger}.`;
}
/** Every item of the list has its word, and none that the list does not know. */
function notAttestable({ routine }, { phase, steps }) {
	const items = routine === null ? [] : itemsOf(routine, phase);
	if (items.length === 0) return "This job has no such list.";
	const missing = items.find(({ id }) => !steps.some(({ item }) => item === id));
	if (missing !== void 0) return `Answer this item too: "${missing.text}".`;
	for (const { item, as, why } of steps) {
		const listed = items.find(({ id }) => id === item);
		if (listed === void 0) return `"${item}" is not on this list.`;
		const answers = [...listed.choices?.map((choice) => choice.id) ?? ["done"], NOT_DONE];
		if (!answers.includes(as)) return `The answers to "${listed.text}" are: ${answers.join(", ")}.`;
		if (as === "not-done" && (why ?? "").trim() === "") return `Give the reason why this is not done: "${listed.text}".`;
	}
	return steps.length > items.length ? "An item is answered twice." : null;
}
function notCheckable(state, { cylinders, part, differs }) {
	if (state.routine?.newPlugs !== true) return "This job does not check new plugs.";
	const { plug } = state.order;
	const allowed = [plug.part, ...plug.alsoParts ?? []];
	if (differs.length === 0 && !allowed.includes(part)) return `The specification allows ${allowed.join(" or ")} in this engine, not ${part}.`;
	return strangers(state, cylinders);
}
/** Why a job cannot be declared void; null when it can. */
function notVoidable(state) {
	return state.voided === null ? null : `${state.voided.by} declared this job void already.`;
}
function wrongAnswer(state, pull, answer) {
	const question = state.questions.find((open) => open.pull === pull);
	if (question === void 0) return `No question is open about pull ${pull}.`;
	return question.answers.includes(answer) ? null : `"${answer}" does not answer this question.`;
}
function notLeftOut(state, command) {
	const { pull, cylinder, on } = command;
	if (!state.questions.some((open) => open.pull === pull)) return `No question is open about pull ${pull}.`;
	if (!state.cylinders.some((c) => c.cylinder === on)) return `This engine has no cylinder ${on}.`;
	return leftOut(state, command).length > 0 ? null : `No pull of cylinder ${cylinder} can belong to the next plug.`;
}

// src/pull/settings.ts
/** Common practice, no source: well above the feel of a socket that finds its hexagon, well below any torque that matters. */
const START_SHARE = .08;
/** A tool that says the same again and again leaves no longer pause, or not three times its own. Assumption. */
const SILENT_MS = 2e3;
const SILENT_INTERVALS = 3;
/** Settings for a window whose lower limit is `lowerNm`, and for what is known of the tool. */
function detectorSettings(lowerNm, tool = {}) {
	return {
		startNm: rounded(START_SHARE * lowerNm, 6),
		stepNm: 0,
		range: null,
		stream: "samples",
		silentMs: SILENT_MS,
		...tool
	};
}
/** The same with what a tool declared of itself. One step of its readings is `10^exponent` where it names no other. */
function settingsFor(lowerNm, { exponent, resolutionCounts, samplingFunction, validRange, updateIntervalMs }) {
	return detectorSettings(lowerNm, {
		stepNm: scaled(Math.max(1, resolutionCounts ?? 1), exponent),
		range: validRange === void 0 || validRange.upperCounts <= 0 ? null : {
			lowerNm: scaled(validRange.lowerCounts, exponent),
			upperNm: scaled(validRange.upperCounts, exponent)
		},
		silentMs: Math.max(SILENT_MS, SILENT_INTERVALS * (updateIntervalMs ?? 0)),
		stream: samplingFunction === "maximum" || samplingFunction === "minimum" ? "maxima" : "samples"
	});
}
/** Whether a reading stands at an end of the scale, or beyond: then nobody knows how high the torque was. */
function endsScale({ range, stepNm }, readNm) {
	if (range === null) return false;
	return readNm > 0 ? readNm >= range.upperNm - stepNm : range.lowerNm < 0 && readNm <= range.lowerNm + stepNm;
}

// src/pull/maxima.ts
/** A maximum that has not grown for so long is the pull's. */
const FINAL_US = 6e5;
/** A value lower than the one before begins a new work cycle, if it is lower by more than this share of the start. */
const NEW_CYCLE_SHARE = .1;
const MOST_RISEN = 256;
/**
* For a tool that sends the highest torque of its work cycle and not the torque as it is (sampling function "maximum" or
* "minimum" of the open measurement service). A pull is one maximum, taken when it has stood for 0.6 s of the readings'
* own time, when the value falls, or when the link ends; a tool that sends nothing more is waited for until it does.
* Such a tool shows no click and no let-off, and its zero cannot be seen.
*/
function createMaximaDetector(settings) {
	let cycle = null;
	let lastUs = Number.NEGATIVE_INFINITY;
	let nowNm = 0;
	/** The maximum already given: the tool goes on sending it until its cycle ends. */
	let givenNm = 0;
	let lastEndUs = null;
	let sinceLastMs = null;
	const finish = (done) => {
		cycle = null;
		givenNm = done.peakNm;
		lastEndUs = done.peakUs;
		const intervalUs = done.samples > 1 ? (done.lastUs - done.startUs) / (done.samples - 1) : 0;
		const reachedUs = (share) => (done.risen.find(({ nm }) => nm >= share * Math.abs(done.peakNm))?.us ?? done.peakUs) - done.startUs;
		const reachedMs = [
			1,
			2,
			3,
			4,
			5,
			6,
			7,
			8,
			9
		].map((tenth) => reachedUs(tenth / 10) / 1e3);
		return {
			startUs: done.startUs,
			endUs: done.peakUs,
			peakNm: done.peakNm,
			peakUs: done.peakUs,
			peakStandardNm: settings.stepNm / Math.sqrt(12),
			highestNm: done.peakNm,
			release: "not-visible",
			releaseNm: null,
			releaseUs: null,
			dropShare: null,
			riseMs: (reachedMs[7] ?? 0) - (reachedMs[1] ?? 0),
			rise: {
				reachedMs,
				slopeAtTopNmPerS: 0,
				impulseNms: 0,
				setbackNm: 0
			},
			turn: null,
			sinceLastMs,
			zeroNm: 0,
			zeroSettled: false,
			noiseNm: 0,
			samples: done.samples,
			intervalUs,
			longestGapUs: done.longestGapUs,
			saturated: endsScale(settings, done.peakNm),
			stream: "maxima",
			cut: null
		};
	};
	const begin = (atUs, nm) => {
		sinceLastMs = lastEndUs === null ? null : (atUs - lastEndUs) / 1e3;
		cycle = {
			startUs: atUs,
			peakUs: atUs,
			lastUs: atUs,
			peakNm: nm,
			samples: 1,
			longestGapUs: 0,
			risen: [{
				us: atUs,
				nm: Math.abs(nm)
			}]
		};
	};
	const goOn = (open, atUs, nm) => {
		open.samples++;
		open.longestGapUs = Math.max(open.longestGapUs, atUs - open.lastUs);
		open.lastUs = atUs;
		if (Math.abs(nm) <= Math.abs(open.peakNm)) return;
		open.peakNm = nm;
		open.peakUs = atUs;
		if (open.risen.length < MOST_RISEN) open.risen.push({
			us: atUs,
			nm: Math.abs(nm)
		});
	};
	const push = (atUs, nm) => {
		if (!(atUs >= lastUs && Number.isFinite(atUs) && Number.isFinite(nm))) throw new RangeError(`torque ${nm} at ${atUs} µs, behind ${lastUs} µs`);
		const highestNm = cycle?.peakNm ?? givenNm;
		const startedAnew = Math.abs(highestNm) - nm * Math.sign(highestNm) > NEW_CYCLE_SHARE * settings.startNm || atUs - lastUs >= 1e3 * settings.silentMs;
		lastUs = atUs;
		nowNm = nm;
		let detected = null;
		if (cycle !== null && (startedAnew || atUs - cycle.peakUs >= FINAL_US)) detected = finish(cycle);
		if (startedAnew) givenNm = 0;
		if (cycle !== null) goOn(cycle, atUs, nm);
		else if (Math.abs(nm) >= settings.startNm && Math.abs(nm) - Math.abs(givenNm) > settings.stepNm) begin(atUs, nm);
		return detected;
	};
	return {
		push,
		pushBatch(atUs, nm, from, to) {
			const detected = [];
			for (let i = from; i < to; i++) {
				const pull = push(atUs[i] ?? NaN, nm[i] ?? NaN);
				if (pull !== null) detected.push(pull);
			}
			return detected;
		},
		cut: () => cycle === null ? null : finish(cycle),
		live: () => ({
			nowNm,
			pulling: cycle !== null,
			peakNm: cycle?.peakNm ?? 0
		})
	};
}

// src/pull/pull-start.ts
/** Samples closer together than this are averaged into frames before a click is looked for in them. */
const FRAME_US = 4e3;
function started(atUs, readNm, rest, before) {
	const { zeroNm, intervalUs, noiseNm, bunched } = rest;
	const sign = readNm < zeroNm ? -1 : 1;
	const stoodNm = before.stoodNm ?? rest.latelyNm;
	const frameSamples = intervalUs > 0 ? Math.max(1, Math.round(FRAME_US / intervalUs)) : 1;
	return {
		startUs: atUs,
		sign,
		startNm: rest.startNm,
		zeroNm,
		zeroSettled: rest.settled,
		zeroStandardNm: rest.zeroStandardNm,
		beforeNm: stoodNm === null ? null : sign * (stoodNm - zeroNm),
		noiseNm,
		intervalUs,
		bunched,
		frameSamples,
		frameSigma: noiseNm / Math.sqrt(frameSamples),
		sinceLastMs: before.endUs === null ? null : (atUs - before.endUs) / 1e3
	};
}

// src/pull/recent.ts
/** A power of two: half a second at 2 kHz. */
const SIZE = 1024;
const MASK = 1023;
/** The last samples of a pull, in fixed memory. Numbered from 0 at the start of the pull; the oldest are forgotten. */
var RecentSamples = class {
	#timeUs = new Float64Array(SIZE);
	#nm = new Float64Array(SIZE);
	#count = 0;
	clear() {
		this.#count = 0;
	}
	add(timeUs, nm) {
		const at = this.#count++ & MASK;
		this.#timeUs[at] = timeUs;
		this.#nm[at] = nm;
	}
	has(i) {
		return i >= 0 && i < this.#count && i >= this.#count - SIZE;
	}
	/** Microseconds since the start of the pull. */
	timeUs(i) {
		return this.#timeUs[i & MASK] ?? NaN;
	}
	nm(i) {
		return this.#nm[i & MASK] ?? NaN;
	}
	/** The newest sample that is not younger than `timeUs`, or the oldest that is remembered. */
	nearest(timeUs) {
		let i = this.#count - 1;
		while (this.has(i - 1) && this.timeUs(i) > timeUs) i--;
		return i;
	}
};

// src/pull/rest.ts
/** The zero is a mean of blocks of rest; a block counts only when the one behind it agrees with it. */
const BLOCK_US = 15e4;
const BLOCK_AT_LEAST = 2;
/** Blocks that the running means reach back: about five seconds, so that drift is followed and noise is not. */
const MEMORY = 32;
/** A zero that has jumped (tare, shock) is believed after so many blocks in a row that agree with each other. */
const MOVED_BLOCKS = 4;
/** What two blocks may differ by beyond their noise, and what a block may differ from the zero by; shares of the start. */
const FLAT_SHARE = .02;
const SAME_ZERO_SHARE = .05;
/** Before a zero is known it is looked for within so many times the start. */
const FIRST_ZERO_WITHIN = 3;
const START_OVER_NOISE = 6;
/** Jitter and single losses stay far below this; bunches of two already come near. */
const BUNCHED = 1.4;
/** At rest, samples further apart than this do not belong to one block. */
const HOLE_US$1 = 4e5;
/**
* What the wrench reads when nobody pulls: its zero, its noise, and how often it sends. `run` is the tight loop that the
* detector spends nearly all its time in: three sums and four comparisons a sample, in one order whatever the batches.
*/
var Rest = class {
	#settings;
	#lastUs = Number.NEGATIVE_INFINITY;
	#lastNm = 0;
	#sum = 0;
	#squares = 0;
	#count = 0;
	#blockStartUs = 0;
	#low = 0;
	#high = 0;
	#waiting = null;
	#zero = 0;
	#zeroCount = 0;
	#blocks = 0;
	#moved = 0;
	#jumped = false;
	#variance = 0;
	#variances = 0;
	#intervalUs = 0;
	#stepSquares = 0;
	/** Mean square of the steps over the square of their mean: 1 for an even stream. */
	#unevenness = 1;
	constructor(settings) {
		this.#settings = settings;
		this.#bound();
	}
	/** The zero that a pull beginning now starts from; 0 as long as no rest was seen. */
	get zeroNm() {
		return this.#blocks > 0 ? this.#zero : 0;
	}
	get settled() {
		return this.#blocks > 0 && !this.#jumped;
	}
	/** What it read in the last tenths of a second; null when it read nothing. */
	get latelyNm() {
		if (this.#waiting !== null) return this.#waiting.mean;
		return this.#count > 0 ? this.#sum / this.#count : null;
	}
	/** Standard uncertainty of the zero. */
	get zeroStandardNm() {
		return this.noiseNm / Math.sqrt(Math.max(1, this.#zeroCount));
	}
	/** Standard deviation of one reading, at least that of its step. */
	get noiseNm() {
		const { stepNm, startNm } = this.#settings;
		const seen = this.#variances > 0 ? this.#variance : this.#waiting?.variance ?? 0;
		return Math.max(Math.sqrt(seen), stepNm / Math.sqrt(12), 1e-4 * startNm);
	}
	/** Usual step between samples; 0 before it is known. */
	get intervalUs() {
		return this.#intervalUs;
	}
	/** Readings come in bunches, as a radio hands them over; their stamps tell little of when they were taken. */
	get bunched() {
		return this.#unevenness > BUNCHED;
	}
	get startNm() {
		return Math.max(this.#settings.startNm, START_OVER_NOISE * this.noiseNm);
	}
	get lastUs() {
		return this.#lastUs;
	}
	/** Whether a reading lies too far off to be rest. */
	beyond(nm) {
		return !(nm > this.#low && nm < this.#high);
	}
	/** Rest begins anew with this sample: at the start of the stream, behind a pull, behind a gap. */
	begin(atUs, nm) {
		this.#waiting = null;
		this.#lastUs = atUs;
		this.#lastNm = nm;
		this.#nextBlock(atUs);
	}
	/** The reading has stood still somewhere else for so long that this is the zero now, though nobody knows why. */
	jump(toNm, count) {
		this.#zero = toNm;
		this.#zeroCount = count;
		this.#blocks = 1;
		this.#jumped = true;
		this.#bound();
	}
	/** Takes in samples `from` to `to` while they are rest; returns the first that is not, or `to`. */
	run(atUs, nm, from, to) {
		let lastUs = this.#lastUs;
		let lastNm = this.#lastNm;
		let sum = this.#sum;
		let squares = this.#squares;
		let stepSquares = this.#stepSquares;
		let count = this.#count;
		let low = this.#low;
		let high = this.#high;
		let closesUs = this.#blockStartUs + BLOCK_US;
		let i = from;
		for (; i < to; i++) {
			const t = atUs[i] ?? NaN;
			const x = nm[i] ?? NaN;
			const step = t - lastUs;
			if (!(x > low && x < high && step >= 0 && step <= HOLE_US$1)) break;
			const change = x - lastNm;
			squares += change * change;
			stepSquares += step * step;
			sum += x;
			count++;
			lastUs = t;
			lastNm = x;
			if (t < closesUs) continue;
			this.#closeBlock(sum, squares, count, t, stepSquares);
			sum = squares = stepSquares = count = 0;
			low = this.#low;
			high = this.#high;
			closesUs = this.#blockStartUs + BLOCK_US;
		}
		this.#lastUs = lastUs;
		this.#lastNm = lastNm;
		this.#sum = sum;
		this.#squares = squares;
		this.#stepSquares = stepSquares;
		this.#count = count;
		return i;
	}
	#nextBlock(atUs) {
		this.#sum = 0;
		this.#squares = 0;
		this.#stepSquares = 0;
		this.#count = 0;
		this.#blockStartUs = atUs;
	}
	#closeBlock(sum, squares, count, atUs, stepSquares) {
		const intervalUs = (atUs - this.#blockStartUs) / count;
		this.#unevenness += (stepSquares / count / (intervalUs * intervalUs) - this.#unevenness) / 8;
		this.#intervalUs += (intervalUs - this.#intervalUs) / (this.#intervalUs === 0 ? 1 : 8);
		this.#blockStartUs = atUs;
		if (count < BLOCK_AT_LEAST) {
			this.#waiting = null;
			return;
		}
		const block = {
			mean: sum / count,
			variance: squares / (2 * count),
			count
		};
		const before = this.#waiting;
		this.#waiting = block;
		if (before === null) return;
		const flat = 4 * (this.#variances > 0 ? this.noiseNm : Math.sqrt((block.variance + before.variance) / 2)) * Math.sqrt(1 / count + 1 / before.count) + FLAT_SHARE * this.#settings.startNm;
		if (Math.abs(block.mean - before.mean) <= flat) this.#learn(before);
		else this.#moved = 0;
	}
	#learn(block) {
		if (this.#blocks > 0 && !this.#sameZero(block)) {
			if (++this.#moved < MOVED_BLOCKS) return;
			this.jump(block.mean, block.count);
		} else {
			this.#blocks = Math.min(this.#blocks + 1, MEMORY);
			this.#zero += (block.mean - this.#zero) / this.#blocks;
			this.#zeroCount = Math.min(this.#zeroCount + block.count, MEMORY * block.count);
			if (this.#blocks >= MOVED_BLOCKS) this.#jumped = false;
		}
		this.#moved = 0;
		this.#variances = Math.min(this.#variances + 1, MEMORY);
		this.#variance += (block.variance - this.#variance) / this.#variances;
		this.#bound();
	}
	#sameZero({ mean, count }) {
		const spread = 5 * this.noiseNm * Math.sqrt(1 / count + 1 / Math.max(1, this.#zeroCount));
		return Math.abs(mean - this.#zero) <= spread + SAME_ZERO_SHARE * this.#settings.startNm;
	}
	#bound() {
		const reach = this.#blocks > 0 ? this.startNm : FIRST_ZERO_WITHIN * this.startNm;
		const middle = this.#blocks > 0 ? this.#zero : 0;
		this.#low = middle - reach;
		this.#high = middle + reach;
	}
};

// src/pull/rise.ts
/** Samples further back than this say nothing of the end of the rise. */
const REACH_US$1 = 1e5;
const AT_LEAST = 3;
/** The pace is first taken from the samples within this time. */
const PACE_US = 6e4;
/** A hand trembles by this share of its speed, and each tremor lasts so long. Assumption. */
const TREMBLES = .1;
const TREMBLES_S = .06;
/** Beyond that the pace changes by about its own size within a second: the joint hardens, the hand slows down. Assumption. */
const DRIFTS_PER_ROOT_S = 1;
/** The least that is taken for a pace, in shares of the torque a second. */
const SLOWEST_PER_S = .2;
/**
* The rise carried on from sample number `last` to `toUs`; null where too few samples came before. A hand on a spring: the
* torque grows at a pace that trembles and drifts, and each reading is off by noise of `sigma`. For that the best there is is
* the filter of R. E. Kalman (1960); its states are the torque, the pace and the tremor.
*/
function riseTo(samples, last, toUs, sigma) {
	let first = last;
	while (samples.has(first - 1) && samples.timeUs(last) - samples.timeUs(first - 1) <= REACH_US$1) first--;
	if (last - first + 1 < AT_LEAST) return null;
	const filter = new RiseFilter(samples.nm(first), paceOf(samples, first, last), sigma);
	for (let i = first + 1; i <= last; i++) {
		filter.predict((samples.timeUs(i) - samples.timeUs(i - 1)) / 1e6);
		filter.correct(samples.nm(i));
	}
	filter.predict(Math.max(0, toUs - samples.timeUs(last)) / 1e6);
	return filter.end;
}
function paceOf(samples, first, last) {
	let from = last - 1;
	while (from > first && samples.timeUs(last) - samples.timeUs(from) < PACE_US) from--;
	const seconds = Math.max(.001, (samples.timeUs(last) - samples.timeUs(from)) / 1e6);
	const pace = Math.abs(samples.nm(last) - samples.nm(from)) / seconds;
	return Math.max(pace, SLOWEST_PER_S * Math.abs(samples.nm(last)));
}
var RiseFilter = class {
	#noise;
	#drift;
	#trembles;
	#nm;
	#pace;
	#tremor = 0;
	/** The covariance, upper half: torque, pace, tremor. */
	#p00;
	#p01 = 0;
	#p02 = 0;
	#p11;
	#p12 = 0;
	#p22;
	constructor(nm, nmPerS, sigma) {
		this.#noise = sigma * sigma;
		this.#drift = (DRIFTS_PER_ROOT_S * nmPerS) ** 2;
		this.#trembles = (TREMBLES * nmPerS) ** 2;
		this.#nm = nm;
		this.#pace = nmPerS;
		this.#p00 = this.#noise;
		this.#p11 = nmPerS * nmPerS;
		this.#p22 = this.#trembles;
	}
	get end() {
		return {
			nm: this.#nm,
			standardNm: Math.sqrt(this.#p00),
			nmPerS: this.#pace + this.#tremor
		};
	}
	predict(s) {
		const stays = Math.exp(-s / TREMBLES_S);
		const b = TREMBLES_S * (1 - stays);
		this.#nm += this.#pace * s + this.#tremor * b;
		this.#tremor *= stays;
		const drift = this.#drift * s;
		const fresh = this.#trembles * (1 - stays * stays);
		const p0 = this.#p00 + s * this.#p01 + b * this.#p02;
		const p1 = this.#p01 + s * this.#p11 + b * this.#p12;
		const p2 = this.#p02 + s * this.#p12 + b * this.#p22;
		this.#p00 = p0 + s * p1 + b * p2 + s * s * (drift + fresh) / 3;
		this.#p01 = p1 + s * drift / 2;
		this.#p02 = stays * p2 + s * fresh / 2;
		this.#p11 += drift;
		this.#p12 *= stays;
		this.#p22 = stays * stays * this.#p22 + fresh;
	}
	correct(readNm) {
		const variance = this.#p00 + this.#noise;
		const off = readNm - this.#nm;
		const k0 = this.#p00 / variance;
		const k1 = this.#p01 / variance;
		const k2 = this.#p02 / variance;
		this.#nm += k0 * off;
		this.#pace += k1 * off;
		this.#tremor += k2 * off;
		this.#p22 -= k2 * this.#p02;
		this.#p12 -= k1 * this.#p02;
		this.#p11 -= k1 * this.#p01;
		this.#p02 -= k0 * this.#p02;
		this.#p01 -= k0 * this.#p01;
		this.#p00 -= k0 * this.#p00;
	}
};

// src/pull/click-top.ts
/** The filter knows a hand by assumption; simulated pulls would do with 1. */
const UNCERTAINTY_FACTOR$1 = 1.3;
/** Time constant of a click's fall where the samples do not show it: 5 to 30 ms in all (practice; from memory). */
const FALL_US = 5e3;
const FALL_LOWER_US = 1e3;
const FALL_UPPER_US = 2e4;
/** What is not known of the moment of release, as a share of the step in which it fell. From simulated clicks. */
const MOMENT_SHARE = .15;
/** Where the end of the rise is looked for: above this share of the drop, from so far in front of it. */
const NEARLY_UP = .85;
const SAFELY_US = 6e3;
/** The last samples on the rise are left out for so long. */
const SURELY_US = 1e3;
/** A sample has fallen when it lacks so many standard deviations, and this share of the way that the rise was carried on. */
const LACKS_SIGMA = 3.5;
const BENDS_SHARE = .3;
/**
* The top of a click: the torque rises, breaks off within a moment and falls to `troughNm`. Where the samples lie far
* apart the break lies between two of them. When it came follows from how far the first sample behind it has fallen; how
* high the torque was then, from the rise in front of it.
*/
function clickTop(samples, crest, kneeUs, troughNm, sigma) {
	const last = lastOfRise(samples, crest, kneeUs, troughNm, sigma);
	let surely = last;
	while (samples.has(surely - 1) && samples.timeUs(last) - samples.timeUs(surely) < SURELY_US) {
		if (samples.timeUs(last) - samples.timeUs(surely - 1) > 2 * SURELY_US) break;
		surely--;
	}
	let top = {
		nm: crest.nm,
		atUs: samples.timeUs(last),
		standardNm: sigma
	};
	for (let round = 0; round < 2; round++) {
		const breakUs = momentOfBreak(samples, last, Math.max(top.nm, crest.nm), troughNm, sigma);
		const rise = riseTo(samples, surely, breakUs, sigma);
		if (rise === null) break;
		const stepUs = samples.has(last + 1) ? samples.timeUs(last + 1) - samples.timeUs(last) : 0;
		const momentNm = Math.abs(rise.nmPerS) * MOMENT_SHARE * stepUs / 1e6;
		const mostNm = samples.nm(last) + Math.abs(samples.nm(last) - samples.nm(last - 1)) + 3 * sigma;
		top = {
			nm: samples.has(last - 1) ? Math.min(rise.nm, mostNm) : rise.nm,
			atUs: breakUs,
			standardNm: Math.hypot(UNCERTAINTY_FACTOR$1 * rise.standardNm, momentNm)
		};
	}
	return top;
}
/** The last sample that still lies on the rise: on from the highest one, as long as noise explains what it lacks. */
function lastOfRise(samples, crest, kneeUs, troughNm, sigma) {
	const dropNm = crest.nm - troughNm;
	let nearly = samples.nearest(kneeUs);
	while (samples.has(nearly - 1) && samples.timeUs(nearly) > crest.atUs && samples.nm(nearly) < troughNm + NEARLY_UP * dropNm) nearly--;
	let last = nearly;
	for (let i = nearly - 1; samples.has(i) && samples.timeUs(nearly) - samples.timeUs(i) <= SAFELY_US; i--) if (samples.nm(i) > samples.nm(last)) last = i;
	const lacks = (of, i) => {
		const rise = riseTo(samples, of, samples.timeUs(i), sigma);
		if (rise === null) return false;
		const bendsNm = BENDS_SHARE * Math.abs(rise.nmPerS) * (samples.timeUs(i) - samples.timeUs(of)) / 1e6;
		return rise.nm - samples.nm(i) > LACKS_SIGMA * Math.hypot(sigma, rise.standardNm) + bendsNm;
	};
	if (samples.has(last - 1) && lacks(last - 1, last)) last--;
	while (last < nearly && !lacks(last, last + 1)) last++;
	return last;
}
/** The fall is about exponential: its time constant from two samples on it, the moment from the first of them. */
function momentOfBreak(samples, last, topNm, troughNm, sigma) {
	const lastUs = samples.timeUs(last);
	if (!samples.has(last + 1)) return lastUs;
	const firstUs = samples.timeUs(last + 1);
	const drop = Math.max(topNm - troughNm, 1e-9);
	const floor = Math.max(.1, 3 * sigma / drop);
	const left = Math.min(1, (samples.nm(last + 1) - troughNm) / drop);
	if (left <= floor) return Math.max(lastUs, firstUs - .5 * (firstUs - lastUs) - .5 * FALL_US);
	let second = last + 2;
	while (samples.has(second + 1) && samples.timeUs(second) - firstUs < FALL_US / 2) second++;
	const betweenUs = samples.has(second) ? samples.timeUs(second) - firstUs : FALL_US;
	const later = samples.has(second) ? (samples.nm(second) - troughNm) / drop : 0;
	const ratio = Math.max(later, floor) / left;
	const seenUs = ratio < 1 ? betweenUs / Math.log(1 / ratio) : FALL_UPPER_US;
	return Math.max(lastUs, firstUs - Math.min(FALL_UPPER_US, Math.max(FALL_LOWER_US, later <= floor ? Math.min(seenUs, FALL_US) : seenUs)) * Math.log(1 / left));
}

// src/pull/climb.ts
const MOST = 192;
/** The record highs of a pull in bounded memory: when it fills up, every other one goes and the steps become twice as wide. */
var Climb = class {
	#steps = [];
	#apartNm;
	constructor(apartNm) {
		this.#apartNm = apartNm;
	}
	add(step) {
		const last = this.#steps.at(-1);
		if (last !== void 0 && step.nm < last.nm + this.#apartNm) return;
		this.#steps.push(step);
		if (this.#steps.length < MOST) return;
		this.#steps = this.#steps.filter((_, i) => i % 2 === 0);
		this.#apartNm *= 2;
	}
	/** Where the torque first came to `nm`, on a straight line between the points; the first or `end` outside of them. */
	reached(nm, end) {
		const i = this.#steps.findIndex((step) => step.nm >= nm);
		const above = i < 0 ? end : this.#steps[i] ?? end;
		const below = i < 0 ? this.#steps.at(-1) : this.#steps[i - 1];
		if (below === void 0 || above.nm <= below.nm || nm <= below.nm || nm >= above.nm) return above;
		const share = (nm - below.nm) / (above.nm - below.nm);
		const between = (a, b) => a + share * (b - a);
		return {
			nm,
			atUs: between(below.atUs, above.atUs),
			angleDeg: between(below.angleDeg, above.angleDeg),
			impulseNms: between(below.impulseNms, above.impulseNms),
			workJ: between(below.workJ, above.workJ),
			setbackNm: above.setbackNm
		};
	}
};

// src/pull/release.ts
/** A click falls by this share of its top at least: the jerk of a plug that breaks loose falls by less. Practice: 5 to 50 %. */
const FALL_SHARE = .1;
/** … and by this many standard deviations of a frame. */
const FALL_SIGMA = 9;
/** Most of the fall takes this long at most, where samples are close enough to tell; a hand that lets go takes longer. */
const FALL_WITHIN_US = 3e4;
const MOST_OF_FALL = .7;
const MOST_LOWS = 64;
/** Behind the fall the torque stands still or rises again for so long: nobody reacts faster. */
const HELD_US$1 = 28e3;
/** A hand that lets go comes to rest far below this share; a head that has tipped still passes torque on. */
const KNEE_SHARE = .35;
/** A head that drops its torque altogether has it back within this time. */
const BACK_WITHIN_US = 8e4;
const RISE_SHARE = .04;
const RISE_SIGMA = 4;
const STILL_SHARE = .03;
const STILL_SIGMA = 3;
/** The tail of a fall still moves by this share of it. */
const TAIL_SHARE = .2;
/**
* Looks for the click in the torque of one pull: a top, a fall within a moment, and a knee from which the torque stands or
* rises again. Takes means of a few samples each (frames), so that noise of a fast tool is small beside the fall.
*/
var ReleaseWatch = class {
	#sigma;
	#intervalUs;
	#crest = null;
	#onUs = 0;
	#kneeNm = 0;
	#kneeUs = 0;
	#framesSinceKnee = 0;
	#troughNm = 0;
	/** The record lows behind the crest: when each level was first reached. */
	#lows = [];
	#over = false;
	/** `sigma` and `intervalUs` of a frame. */
	constructor(sigma, intervalUs) {
		this.#sigma = sigma;
		this.#intervalUs = intervalUs;
	}
	/** A fall has begun that may be a click, and is not at its end. */
	get falling() {
		return this.#crest !== null && !this.#over && this.#fallen(this.#crest);
	}
	frame(step) {
		const crest = this.#crest;
		const { nm, atUs } = step;
		if (crest === null || nm >= crest.nm) {
			this.#climbFrom(step);
			return null;
		}
		const still = Math.max(STILL_SHARE * crest.nm, STILL_SIGMA * this.#sigma);
		if (nm >= crest.nm - still) this.#onUs = atUs;
		if (nm < this.#troughNm) {
			this.#troughNm = nm;
			if (this.#lows.length < MOST_LOWS) this.#lows.push({
				nm,
				atUs
			});
		}
		const tail = Math.max(still, TAIL_SHARE * (crest.nm - this.#kneeNm));
		if (nm < this.#kneeNm - tail) {
			this.#kneeNm = nm;
			this.#kneeUs = atUs;
			this.#framesSinceKnee = 0;
		} else this.#framesSinceKnee++;
		const back = this.#troughNm < KNEE_SHARE * crest.nm ? KNEE_SHARE * crest.nm : Math.max(RISE_SHARE * crest.nm, RISE_SIGMA * this.#sigma);
		const rose = nm - this.#troughNm >= back;
		const fall = this.#over || !this.#fallen(crest) ? null : this.#ended(crest, atUs, rose);
		if (fall !== null) this.#over = true;
		if (rose) this.#climbFrom(step);
		return fall;
	}
	#fallen(crest) {
		return crest.nm - this.#troughNm >= Math.max(FALL_SHARE * crest.nm, FALL_SIGMA * this.#sigma);
	}
	#ended(crest, atUs, rose) {
		const heldUs = Math.max(atUs - this.#kneeUs, this.#framesSinceKnee * this.#intervalUs);
		if (!rose && heldUs < HELD_US$1 + this.#intervalUs) return null;
		const most = crest.nm - MOST_OF_FALL * (crest.nm - this.#troughNm);
		const quick = (this.#lows.find((low) => low.nm <= most)?.atUs ?? atUs) - this.#onUs <= FALL_WITHIN_US + this.#intervalUs;
		const deep = this.#troughNm < KNEE_SHARE * crest.nm;
		const returned = rose && atUs - this.#onUs <= BACK_WITHIN_US;
		return {
			crest,
			kneeUs: this.#kneeUs,
			troughNm: this.#troughNm,
			click: deep ? returned : quick
		};
	}
	#climbFrom(step) {
		this.#crest = step;
		this.#onUs = step.atUs;
		this.#kneeNm = step.nm;
		this.#kneeUs = step.atUs;
		this.#framesSinceKnee = 0;
		this.#troughNm = step.nm;
		if (this.#lows.length > 0) this.#lows = [];
		this.#over = false;
	}
};

// src/pull/moments.ts
/** Sums of powers, to which points can be added and from which least squares fits of degree 0 and 2 are read at any time. */
var Moments = class {
	n = 0;
	#x1 = 0;
	#x2 = 0;
	#x3 = 0;
	#x4 = 0;
	#y = 0;
	#xy = 0;
	#x2y = 0;
	#y2 = 0;
	add(x, y, weight = 1) {
		const square = x * x;
		this.n += weight;
		this.#x1 += weight * x;
		this.#x2 += weight * square;
		this.#x3 += weight * square * x;
		this.#x4 += weight * square * square;
		this.#y += weight * y;
		this.#xy += weight * x * y;
		this.#x2y += weight * square * y;
		this.#y2 += weight * y * y;
	}
	/** Null where the points do not determine it. */
	fit(degree) {
		if (this.n <= degree) return null;
		return degree === 0 ? this.#mean() : this.#parabola();
	}
	#mean() {
		const c0 = this.#y / this.n;
		return {
			c0,
			c1: 0,
			c2: 0,
			squares: Math.max(0, this.#y2 - c0 * this.#y),
			freedom: this.n - 1,
			v00: 1 / this.n,
			v01: 0,
			v02: 0,
			v11: 0,
			v12: 0,
			v22: 0
		};
	}
	#parabola() {
		const { n } = this;
		const x1 = this.#x1;
		const x2 = this.#x2;
		const x3 = this.#x3;
		const x4 = this.#x4;
		const m00 = x2 * x4 - x3 * x3;
		const m01 = x2 * x3 - x1 * x4;
		const m02 = x1 * x3 - x2 * x2;
		const det = n * m00 + x1 * m01 + x2 * m02;
		if (det <= 1e-9 * n * x2 * x4) return null;
		const m11 = n * x4 - x2 * x2;
		const m12 = x1 * x2 - n * x3;
		const m22 = n * x2 - x1 * x1;
		const c0 = (m00 * this.#y + m01 * this.#xy + m02 * this.#x2y) / det;
		const c1 = (m01 * this.#y + m11 * this.#xy + m12 * this.#x2y) / det;
		const c2 = (m02 * this.#y + m12 * this.#xy + m22 * this.#x2y) / det;
		return {
			c0,
			c1,
			c2,
			squares: Math.max(0, this.#y2 - c0 * this.#y - c1 * this.#xy - c2 * this.#x2y),
			freedom: n - 3,
			v00: m00 / det,
			v01: m01 / det,
			v02: m02 / det,
			v11: m11 / det,
			v12: m12 / det,
			v22: m22 / det
		};
	}
};
const valueAt = ({ c0, c1, c2 }, x) => c0 + x * (c1 + x * c2);
/** Variance of the fitted value at `x`, for unit variance of a point. */
function varianceAt({ v00, v01, v02, v11, v12, v22 }, x) {
	const square = x * x;
	return v00 + 2 * x * v01 + square * (2 * v02 + v11) + 2 * square * x * v12 + square * square * v22;
}
/** Whether noise of standard deviation `sigma` explains what the fit leaves over (chi square, about three sigma). */
function explains({ squares, freedom }, sigma) {
	return squares <= sigma * sigma * (freedom + 3 * Math.sqrt(2 * freedom) + 1);
}

// src/pull/agreement.ts
/** Half-width of the intervals that must agree, in standard deviations. */
const AGREES_WITHIN = 1.2;
/**
* Whether the value at x = 0 of a wider stretch agrees with those of all narrower ones within their uncertainty
* (intersection of confidence intervals, A. Goldenshluger and A. Nemirovski): what bends the fit away shows there first.
*/
var Agreement = class {
	#sigma;
	#lower = Number.NEGATIVE_INFINITY;
	#upper = Number.POSITIVE_INFINITY;
	constructor(sigma) {
		this.#sigma = sigma;
	}
	takes(fit) {
		const reach = AGREES_WITHIN * this.#sigma * Math.sqrt(varianceAt(fit, 0));
		const lower = Math.max(this.#lower, fit.c0 - reach);
		const upper = Math.min(this.#upper, fit.c0 + reach);
		if (lower > upper) return false;
		this.#lower = lower;
		this.#upper = upper;
		return true;
	}
};

// src/pull/top.ts
/** Fits reach this far from the top, and count time in these units. */
const REACH_US = 16e4;
const UNIT_US = 1e4;
/** How fast a stretch that is fitted grows. */
const GROWTH = .25;

// src/pull/smooth-top.ts
/**
* The stretch that is fitted was chosen by the samples themselves, so the fit's own uncertainty is too small. From simulated
* pulls: |error| stays below two standard uncertainties in 95 % and more.
*/
const UNCERTAINTY_FACTOR = 2.5;
const HIDDEN_SHARE = .3;
const HIDDEN_SIGMA = 4;
/** A stretch begins with the samples this near, and with two more on each side if they are not far. */
const FIRST_STRETCH_US = 8e3;
const NEIGHBOURS_US = 22e3;
/**
* The top of a smooth maximum near `aroundUs`: the vertex of a parabola where the torque visibly bends, else the mean of
* what noise cannot tell apart. The highest of n noisy samples would lie above the truth; these do not.
*/
function smoothTop(samples, aroundUs, sigma) {
	const at = samples.nearest(aroundUs);
	const t0 = samples.timeUs(at);
	const bent = grown(samples, at, t0, 2, sigma);
	const vertex = bent === null ? null : vertexOf(bent, t0, sigma);
	const level = grown(samples, at, t0, 0, sigma);
	const flat = {
		nm: level === null ? samples.nm(at) : level.fit.c0,
		atUs: t0,
		standardNm: sigma * Math.sqrt(level === null ? 1 : varianceAt(level.fit, 0))
	};
	const top = vertex !== null && vertex.standardNm < flat.standardNm ? vertex : flat;
	return {
		...top,
		standardNm: Math.hypot(UNCERTAINTY_FACTOR * top.standardNm, hiddenNm$1(samples, at, sigma))
	};
}
/** What may lie between the highest sample and its neighbours: a share of the steps to them, beyond their noise. */
function hiddenNm$1(samples, at, sigma) {
	const step = (i) => samples.has(i) ? Math.max(0, Math.abs(samples.nm(at) - samples.nm(i)) - HIDDEN_SIGMA * sigma) : 0;
	return HIDDEN_SHARE * (step(at - 1) + step(at + 1)) / 2;
}
/**
* The widest stretch about `at` that a polynomial of this degree still explains. It grows by a share of itself, to the left
* and to the right in turn, and by less where that goes too far.
*/
function grown(samples, at, t0, degree, sigma) {
	const stretch = new Stretch(samples, at, t0, degree, sigma);
	for (let left = true, right = true; left || right;) {
		const most = stretch.share();
		left &&= stretch.growLeft(most);
		right &&= stretch.growRight(most);
	}
	return stretch.grown();
}
var Stretch = class {
	#samples;
	#t0;
	#y0;
	#degree;
	#sigma;
	#moments = new Moments();
	#agreement;
	#left;
	#right;
	#fit;
	constructor(samples, at, t0, degree, sigma) {
		this.#samples = samples;
		this.#t0 = t0;
		this.#y0 = samples.nm(at);
		this.#degree = degree;
		this.#sigma = sigma;
		this.#agreement = new Agreement(sigma);
		const { left, right } = firstStretch(samples, at, t0);
		this.#left = left;
		this.#right = right;
		for (let i = left; i <= right; i++) this.#add(i, 1);
		this.#fit = this.#moments.fit(degree);
		while (this.#right > this.#left && this.#fit !== null && !explains(this.#fit, sigma)) {
			if (this.#left < at) this.#add(this.#left++, -1);
			if (this.#right > at) this.#add(this.#right--, -1);
			this.#fit = this.#moments.fit(degree);
		}
		if (this.#fit !== null) this.#agreement.takes(this.#fit);
	}
	/** By how many samples it grows at a time. */
	share() {
		return Math.max(1, Math.floor(this.#moments.n * GROWTH));
	}
	growLeft(most) {
		const count = this.#grow(this.#left - 1, -1, most);
		this.#left -= count;
		return count > 0;
	}
	growRight(most) {
		const count = this.#grow(this.#right + 1, 1, most);
		this.#right += count;
		return count > 0;
	}
	grown() {
		const fit = this.#fit;
		if (fit === null) return null;
		return {
			fit: {
				...fit,
				c0: fit.c0 + this.#y0
			},
			fromX: this.#x(this.#left),
			toX: this.#x(this.#right)
		};
	}
	/** Takes in as many samples as still fit, at most `most`, from `from` on; how many they were. */
	#grow(from, step, most) {
		let count = 0;
		while (count < most && inReach(this.#samples, from + step * count, this.#t0)) count++;
		for (; count > 0; count = Math.floor(count / 2)) {
			for (let n = 0; n < count; n++) this.#add(from + step * n, 1);
			const wider = this.#moments.fit(this.#degree);
			if (wider === null || explains(wider, this.#sigma) && this.#agreement.takes(wider)) {
				this.#fit = wider ?? this.#fit;
				return count;
			}
			for (let n = 0; n < count; n++) this.#add(from + step * n, -1);
		}
		return 0;
	}
	#add(i, weight) {
		this.#moments.add(this.#x(i), this.#samples.nm(i) - this.#y0, weight);
	}
	#x(i) {
		return (this.#samples.timeUs(i) - this.#t0) / UNIT_US;
	}
};
/** The sample in the middle was chosen for being high: alone it is no beginning. */
function firstStretch(samples, at, t0) {
	let left = at;
	let right = at;
	while (near(samples, left - 1, at - left + 1, t0)) left--;
	while (near(samples, right + 1, right - at + 1, t0)) right++;
	return {
		left,
		right
	};
}
const near = (samples, i, n, t0) => samples.has(i) && Math.abs(samples.timeUs(i) - t0) <= (n <= 2 ? NEIGHBOURS_US : FIRST_STRETCH_US);
const inReach = (samples, i, t0) => samples.has(i) && Math.abs(samples.timeUs(i) - t0) <= 16e4;
function vertexOf({ fit, fromX, toX }, t0, sigma) {
	const bendStandard = sigma * Math.sqrt(fit.v22);
	if (!(fit.c2 < -3 * bendStandard)) return null;
	const x = -fit.c1 / (2 * fit.c2);
	if (x < fromX || x > toX) return null;
	const bias = sigma * sigma * fit.v11 / (4 * Math.abs(fit.c2));
	const standardNm = sigma * Math.sqrt(varianceAt(fit, x)) + bias;
	return {
		nm: valueAt(fit, x) - bias,
		atUs: t0 + x * UNIT_US,
		standardNm
	};
}

// src/pull/tops.ts
/** Samples further apart than this cannot show a click. */
const CLICK_VISIBLE_US = 25e3;
/** A highest torque is final when nothing higher came for so long. */
const TOP_FINAL_US = 4e4;
const TOP_FINAL_FRAMES = 3;
/** A fall in front of a much higher peak was no click. */
const CLICK_NOT_BELOW = .7;
const MOST_CLICKS = 8;
/** What lies this far below the best top will not be a better one when it is estimated. */
const SURELY_LOWER = .95;
const NEVER_SIGMA = 5;
const CLIMB_STEPS_PER_START = 8;
/** The tops of a pull: each is estimated as soon as it is known for one, from the samples that are then still there. */
var Tops = class {
	climb;
	#recent;
	#watch;
	#noiseNm;
	/** Samples too far apart to show a click still show that the torque fell. */
	#allFalls;
	#high = null;
	#framesSinceHigh = 0;
	#highIsFinal = true;
	#best = null;
	#clicks = [];
	constructor(recent, started) {
		const { startNm, noiseNm, frameSigma, frameSamples, intervalUs } = started;
		this.climb = new Climb(startNm / CLIMB_STEPS_PER_START);
		this.#recent = recent;
		this.#watch = new ReleaseWatch(frameSigma, frameSamples * intervalUs);
		this.#noiseNm = noiseNm;
		this.#allFalls = intervalUs > CLICK_VISIBLE_US;
	}
	frame(step) {
		this.#climbTo(step);
		const fall = this.#watch.frame(step);
		if (fall === null || !(fall.click || this.#allFalls)) return;
		const { crest, kneeUs, troughNm } = fall;
		const top = clickTop(this.#recent, crest, kneeUs, troughNm, this.#noiseNm);
		this.#candidate({
			top,
			step: crest
		});
		this.#high = null;
		this.#highIsFinal = true;
		if (fall.click) this.#clicked({
			top,
			step: crest,
			troughNm
		});
	}
	/** The highest top; null when none was ever looked at. */
	highest() {
		if (!this.#highIsFinal) this.#settleHigh();
		return this.#best;
	}
	/** The first click that no much higher peak came behind. */
	clickBelow(peakNm) {
		return this.#clicks.find(({ top }) => top.nm >= CLICK_NOT_BELOW * peakNm) ?? null;
	}
	#climbTo(step) {
		if (this.#high === null || step.nm > this.#high.nm) {
			this.#high = step;
			this.#framesSinceHigh = 0;
			this.#highIsFinal = false;
			this.climb.add(step);
			return;
		}
		this.#framesSinceHigh++;
		if (this.#highIsFinal || this.#framesSinceHigh < TOP_FINAL_FRAMES) return;
		if (step.atUs - this.#high.atUs >= TOP_FINAL_US && !this.#watch.falling) this.#settleHigh();
	}
	#settleHigh() {
		this.#highIsFinal = true;
		const step = this.#high;
		if (step === null) return;
		const mostNm = step.nm + NEVER_SIGMA * this.#noiseNm;
		if (this.#best !== null && mostNm < SURELY_LOWER * this.#best.top.nm) return;
		this.#candidate({
			top: smoothTop(this.#recent, step.atUs, this.#noiseNm),
			step
		});
	}
	#candidate(top) {
		if (this.#best === null || top.top.nm > this.#best.top.nm) this.#best = top;
	}
	#clicked(click) {
		const highest = this.#best?.top.nm ?? 0;
		this.#clicks = this.#clicks.filter(({ top }) => top.nm >= CLICK_NOT_BELOW * highest);
		if (this.#clicks.length < MOST_CLICKS) this.#clicks.push(click);
	}
};

// src/pull/zero-doubt.ts
/**
* How far the zero may be off, where a shock moved it just before the pull or in it, and rest was too short to learn the new
* one: by where the torque stands behind the pull; where that was not seen, by where it stood before. (A standard for
* calibration calls the first the residual of the zero.) What noise explains, or a hand that rests, is left alone.
*/
function zeroDoubtNm(seen) {
	const offNm = Math.abs(seen.afterNm ?? seen.beforeNm ?? 0);
	return offNm > seen.withinNm ? offNm : 0;
}

// src/pull/detected.ts
/** A gap as long as this may hide a click. */
const CLICK_HIDDEN_US = 4e4;
/** The highest of many readings lies above the torque by so many standard deviations at most. */
const HIGHEST_SIGMA = 4.5;
/** Samples are missing where they lie further apart than so many usual steps. */
const MISSING_STEPS = 3;
/** Null when it only seemed to reach the start, by noise on top of a knock. */
function detectedPull(settings, started, ending, seen) {
	const { sign, startUs, startNm, zeroNm, noiseNm } = started;
	const { tops, highest, last, samples, longestGapUs } = seen;
	const saturated = highest.endsScale(settings, zeroNm + sign * highest.nm, noiseNm);
	const asRead = {
		nm: highest.nm,
		atUs: last.atUs,
		standardNm: noiseNm
	};
	const best = tops.highest() ?? {
		top: asRead,
		step: last
	};
	const peak = saturated ? {
		...asRead,
		atUs: best.top.atUs
	} : atLeast(highest.nm, best.top, noiseNm);
	if (peak.nm < startNm) return null;
	const intervalUs = started.intervalUs || last.atUs / Math.max(1, samples - 1);
	const click = tops.clickBelow(peak.nm);
	const visible = intervalUs <= 25e3 && (click !== null || seen.blindUs <= CLICK_HIDDEN_US);
	const release = visible ? click : null;
	const first = release ?? {
		top: peak,
		step: best.step
	};
	const rise = riseOf(tops.climb, first);
	const { beforeNm } = started;
	const doubtNm = zeroDoubtNm({
		beforeNm,
		afterNm: ending.afterNm,
		withinNm: seen.withinNm
	});
	return {
		startUs,
		endUs: ending.endUs,
		peakNm: sign * peak.nm,
		peakUs: startUs + Math.max(0, Math.round(peak.atUs)),
		peakStandardNm: Math.hypot(peak.standardNm, started.zeroStandardNm, doubtNm / Math.sqrt(3), hiddenNm(rise, seen.blindUs, intervalUs) / Math.sqrt(3)),
		highestNm: sign * highest.nm,
		release: visible ? release === null ? "none" : "seen" : "not-visible",
		releaseNm: release === null ? null : sign * release.top.nm,
		releaseUs: release === null ? null : startUs + Math.max(0, Math.round(release.top.atUs)),
		dropShare: release === null ? null : 1 - release.troughNm / release.top.nm,
		riseMs: (rise.reachedMs[7] ?? 0) - (rise.reachedMs[1] ?? 0),
		rise,
		turn: turnOf(tops.climb, first, best.step),
		sinceLastMs: started.sinceLastMs,
		zeroNm,
		zeroSettled: started.zeroSettled && doubtNm === 0,
		noiseNm,
		samples,
		intervalUs,
		longestGapUs,
		saturated,
		stream: "samples",
		cut: ending.cut
	};
}
/** How much higher the torque may have gone where samples are missing high up in the pull, or lie too far apart anyway: on at its pace, for as long. */
function hiddenNm({ slopeAtTopNmPerS }, blindUs, intervalUs) {
	return blindUs > CLICK_HIDDEN_US && blindUs > MISSING_STEPS * intervalUs || intervalUs > 25e3 ? slopeAtTopNmPerS * blindUs / 1e6 : 0;
}
/** No fit lies far below what was read. */
function atLeast(highestNm, top, noiseNm) {
	const leastNm = highestNm - HIGHEST_SIGMA * noiseNm;
	if (top.nm >= leastNm) return top;
	return {
		...top,
		nm: leastNm,
		standardNm: Math.hypot(top.standardNm, (leastNm - top.nm) / 2)
	};
}
function riseOf(climb, { top, step }) {
	const end = {
		...step,
		nm: top.nm,
		atUs: Math.max(step.atUs, top.atUs)
	};
	let before = 0;
	const reachedMs = [
		1,
		2,
		3,
		4,
		5,
		6,
		7,
		8,
		9
	].map((tenth) => {
		before = Math.max(before, climb.reached(tenth / 10 * top.nm, end).atUs / 1e3);
		return before;
	});
	const lastMs = Math.max(top.atUs / 1e3 - (reachedMs[7] ?? 0), 0);
	return {
		reachedMs,
		slopeAtTopNmPerS: lastMs > 0 ? .2 * Math.max(0, top.nm) * 1e3 / lastMs : 0,
		impulseNms: step.impulseNms,
		setbackNm: step.setbackNm
	};
}
function turnOf(climb, first, peak) {
	if (!Number.isFinite(peak.angleDeg)) return null;
	const from = (share) => peak.angleDeg - climb.reached(share * first.top.nm, first.step).angleDeg;
	return {
		startToPeakDeg: peak.angleDeg,
		from10PercentDeg: from(.1),
		from50PercentDeg: from(.5),
		workJ: peak.workJ
	};
}

// src/pull/highest.ts
/** Noise of less than this many steps leaves readings equal by itself. */
const NOISY_STEPS = .5;
/** Equal readings in a row at the top are the end of the scale when noise makes so many more seldom than this. */
const BY_CHANCE = 1e-5;
/** The highest reading of a pull, and whether it stood at the end of the scale. */
var Highest = class {
	#nm = Number.NEGATIVE_INFINITY;
	#last = 0;
	#equal = 0;
	#mostEqual = 0;
	get nm() {
		return this.#nm;
	}
	/** Sample number `n`; only those that are as high as the highest before need to be told. */
	add(nm, n) {
		if (nm > this.#nm) {
			this.#nm = nm;
			this.#equal = 0;
			this.#mostEqual = 0;
		}
		this.#equal = n === this.#last + 1 ? this.#equal + 1 : 1;
		this.#last = n;
		if (this.#equal > this.#mostEqual) this.#mostEqual = this.#equal;
	}
	/** `readNm`: the same as the tool said it. */
	endsScale(settings, readNm, noiseNm) {
		if (endsScale(settings, readNm)) return true;
		return this.#mostEqual >= clippedFrom(noiseNm / settings.stepNm);
	}
};
/** How many readings are not equal by chance, where the noise of each has so many steps. */
function clippedFrom(noiseSteps) {
	if (!(noiseSteps >= NOISY_STEPS) || noiseSteps === Number.POSITIVE_INFINITY) return Number.POSITIVE_INFINITY;
	const sameAgain = 1 / (Math.sqrt(2 * Math.PI) * noiseSteps);
	return 1 + Math.ceil(Math.log(BY_CHANCE) / Math.log(sameAgain));
}

// src/pull/sample-clock.ts
/** The clock that stands in for bunched stamps takes up their lateness within about this time, and gives up beyond the other. */
const FOLLOW_US = 2e5;
const LATE_US = 2e5;
/**
* When a sample was taken, of those that come in bunches as a radio hands them over: by a clock that ticks with the usual
* step and follows the stamps slowly.
*/
function whenTaken(stampedUs, lastUs, intervalUs) {
	const dueUs = lastUs + intervalUs;
	const lateUs = stampedUs - dueUs;
	return Math.abs(lateUs) > LATE_US ? Math.max(stampedUs, lastUs) : Math.max(lastUs, dueUs + intervalUs / FOLLOW_US * lateUs);
}

// src/pull/standing.ts
/** A pull is over once the torque has stayed below this share of the start for so long: noise cannot split a pull. */
const END_SHARE = .5;
const REST_US = 12e4;
/** A low torque that stands as still as this for so long is nobody pulling: the zero has moved. Behind a pull it takes less. */
const STANDS_US = 2e6;
const STANDS_BEHIND_US = 1e6;
const STANDS_BELOW_STARTS = 3;
const WITHIN_START = .25;
const WITHIN_SIGMA = 4;
/** Nobody pulls who holds so still for so long from the beginning. Assumption. */
const HELD_US = 2e5;
/** Where the torque of a pull stands still, and since when it is low: what tells its end. */
var Standing = class {
	/** What noise and a hand that rests may move a level by. */
	withinNm;
	#startNm;
	#highNm;
	#endNm;
	#nm;
	#mostNm;
	#sinceUs = 0;
	#sum = 0;
	#count = 0;
	#lowSinceUs = Number.POSITIVE_INFINITY;
	#moved = false;
	constructor({ startNm, frameSigma }, nm) {
		this.withinNm = Math.max(WITHIN_START * startNm, WITHIN_SIGMA * frameSigma);
		this.#startNm = startNm;
		this.#mostNm = nm;
		this.#highNm = STANDS_BELOW_STARTS * startNm;
		this.#endNm = END_SHARE * startNm;
		this.#nm = nm;
	}
	add(us, nm) {
		if (nm >= this.#endNm) this.#lowSinceUs = Number.POSITIVE_INFINITY;
		else if (us < this.#lowSinceUs) this.#lowSinceUs = us;
		if (nm > this.#mostNm) this.#mostNm = nm;
		const off = nm - this.#nm;
		if (off > this.withinNm || off < -this.withinNm) this.#move(us, nm);
		this.#sum += nm;
		this.#count++;
	}
	/** From this time on there may be an end. */
	get endsUs() {
		const restsUs = this.#lowSinceUs + REST_US;
		const standsUs = this.#nm - this.withinNm >= this.#highNm ? Number.POSITIVE_INFINITY : this.#sinceUs + this.#standsUs;
		return Math.min(restsUs, standsUs);
	}
	/** Since when the torque has been low, once that is long enough to be rest. */
	restedUs(us) {
		return us - this.#lowSinceUs >= REST_US ? this.#lowSinceUs : null;
	}
	/** The level at which a low torque has stood still too long to be a hand; null while none does. */
	stoodAt(us) {
		if (us - this.#sinceUs < this.#standsUs || this.#count < 4 || this.nowNm >= this.#highNm) return null;
		return {
			nm: this.nowNm,
			count: this.#count,
			sinceUs: this.#sinceUs,
			pulled: this.#pulled
		};
	}
	get nowNm() {
		return this.#count > 0 ? this.#sum / this.#count : this.#nm;
	}
	/** It has stood in one place from the beginning, and for a while. */
	neverMoved(us) {
		return !this.#moved && us >= HELD_US;
	}
	get #pulled() {
		return this.#mostNm > this.#nm + this.withinNm + this.#startNm;
	}
	get #standsUs() {
		return this.#pulled ? STANDS_BEHIND_US : STANDS_US;
	}
	#move(us, nm) {
		this.#moved = true;
		this.#nm = nm;
		this.#sinceUs = us;
		this.#sum = 0;
		this.#count = 0;
	}
};

// src/pull/turning.ts
/** How far the tool was turned since the start of a pull, and the work that was done by it; NaN where it does not tell. */
var Turning = class {
	turnedDeg = 0;
	workJ = 0;
	#angleDeg;
	constructor(angleDeg) {
		this.#angleDeg = angleDeg;
	}
	unknown() {
		this.turnedDeg = NaN;
		this.workJ = NaN;
	}
	/** `meanNm`: the torque since the sample before. */
	add(angleDeg, meanNm) {
		const turned = angleDeg - this.#angleDeg;
		this.turnedDeg += turned;
		this.workJ += meanNm * turned * Math.PI / 180;
		this.#angleDeg = angleDeg;
	}
};

// src/pull/under-way.ts
/** Samples further apart than this within a pull leave open what happened between them. */
const HOLE_US = 4e5;
/** Noise alone falls back by so many standard deviations of a frame. */
const SETBACK_SIGMA = 5;
/**
* A pull that has begun, in bounded memory. Torque counts upwards in the direction of the pull, times from its start in
* microseconds, so that neither the zero nor the clock's origin has any influence on what is found.
*/
var PullUnderWay = class {
	#settings;
	#begun;
	#recent;
	#tops;
	#highest = new Highest();
	#standing;
	#turning;
	#samples = 0;
	#stampUs;
	#lastUs = 0;
	#lastNm;
	#longestGapUs = 0;
	#blindUs = 0;
	/** Twice ∫ torque dt, in N·m·µs. */
	#impulse = 0;
	#frameCount = 0;
	#frameNm = 0;
	#frameUs = 0;
	#recordNm = 0;
	#lowSinceRecordNm = 0;
	#setbackNm = 0;
	/** Begins with a sample that {@link run} is yet to take. `recent` is cleared and used from here on. */
	constructor(settings, started, recent, readNm, angleDeg) {
		this.#settings = settings;
		this.#begun = started;
		this.#recent = recent;
		this.#stampUs = started.startUs;
		this.#lastNm = started.sign * (readNm - started.zeroNm);
		this.#tops = new Tops(recent, started);
		this.#standing = new Standing(started, this.#lastNm);
		this.#turning = new Turning(started.sign * angleDeg);
		recent.clear();
	}
	/** The highest torque so far, with its sign. */
	get peakNm() {
		return this.#begun.sign * this.#highest.nm;
	}
	get zeroNm() {
		return this.#begun.zeroNm;
	}
	/** Where the torque stands, as read. */
	get standsNm() {
		return this.#asRead(this.#standing.nowNm);
	}
	/** It stood in one place from the beginning: a zero that has moved, and nobody who pulls. */
	get neverMoved() {
		return this.#standing.neverMoved(this.#lastUs);
	}
	/**
	* Takes in samples `from` to `to` as long as they belong to the pull; returns the first that does not, or stands behind
	* the one that may have ended it. All that changes with every sample is kept in locals meanwhile.
	*/
	run(atUs, nm, angleDeg, from, to) {
		const { zeroNm, sign, startUs, startNm, intervalUs, bunched, frameSamples } = this.#begun;
		const recent = this.#recent;
		const before = this.#samples - from;
		let highestNm = this.#highest.nm;
		let stampUs = this.#stampUs;
		let lastUs = this.#lastUs;
		let lastNm = this.#lastNm;
		let longestGapUs = this.#longestGapUs;
		let blindUs = this.#blindUs;
		let impulse = this.#impulse;
		let frameNm = this.#frameNm;
		let frameUs = this.#frameUs;
		let frameCount = this.#frameCount;
		let endsUs = this.#standing.endsUs;
		if (angleDeg === null) this.#turning.unknown();
		let i = from;
		while (i < to) {
			const t = atUs[i] ?? NaN;
			const torque = sign * ((nm[i] ?? NaN) - zeroNm);
			const gapUs = t - stampUs;
			if (!(gapUs >= 0 && gapUs <= 4e5 && torque > -startNm && torque < Number.POSITIVE_INFINITY)) break;
			stampUs = t;
			if (gapUs > longestGapUs) longestGapUs = gapUs;
			const stampedUs = t - startUs;
			const us = bunched && before + i > 0 ? whenTaken(stampedUs, lastUs, intervalUs) : stampedUs;
			const stepUs = us - lastUs;
			if (stepUs > blindUs && Math.max(torque, lastNm) >= .5 * highestNm) blindUs = stepUs;
			const sumNm = torque + lastNm;
			impulse += sumNm * stepUs;
			if (angleDeg !== null) this.#turning.add(sign * (angleDeg[i] ?? NaN), .5 * sumNm);
			recent.add(us, torque);
			if (torque >= highestNm) {
				highestNm = torque;
				this.#highest.add(torque, before + i);
			}
			lastUs = us;
			lastNm = torque;
			frameNm += torque;
			frameUs += us;
			i++;
			if (++frameCount >= frameSamples) {
				this.#impulse = impulse;
				this.#closeFrame(frameUs / frameCount, frameNm / frameCount);
				frameNm = frameUs = frameCount = 0;
				endsUs = this.#standing.endsUs;
			}
			if (us >= endsUs) break;
		}
		this.#samples += i - from;
		this.#stampUs = stampUs;
		this.#lastUs = lastUs;
		this.#lastNm = lastNm;
		this.#longestGapUs = longestGapUs;
		this.#blindUs = blindUs;
		this.#impulse = impulse;
		this.#frameNm = frameNm;
		this.#frameUs = frameUs;
		this.#frameCount = frameCount;
		return i;
	}
	/** How it ended, once the torque has rested or stood for long enough; else null. */
	get rested() {
		const us = this.#standing.restedUs(this.#lastUs);
		if (us === null) return null;
		return {
			endUs: this.#begun.startUs + Math.round(us),
			cut: null,
			afterNm: this.#standing.nowNm
		};
	}
	/**
	* The level, as read, at which a low torque has stood still too long to be a hand, and how that ended the pull; null
	* while none does.
	*/
	get stoodAt() {
		const stood = this.#standing.stoodAt(this.#lastUs);
		if (stood === null) return null;
		const endUs = this.#begun.startUs + Math.round(stood.sinceUs);
		return {
			nm: this.#asRead(stood.nm),
			count: stood.count,
			pulled: stood.pulled,
			ending: {
				endUs,
				cut: null,
				afterNm: stood.nm
			}
		};
	}
	/** The pull as found; null when it only seemed to reach the start, by noise on top of a knock. */
	finish(ending) {
		if (this.#frameCount > 0) this.#closeFrame(this.#frameUs / this.#frameCount, this.#frameNm / this.#frameCount);
		return detectedPull(this.#settings, this.#begun, ending, {
			tops: this.#tops,
			highest: this.#highest,
			last: this.#step(this.#lastUs, this.#lastNm),
			samples: this.#samples,
			longestGapUs: this.#longestGapUs,
			blindUs: this.#blindUs,
			withinNm: this.#standing.withinNm
		});
	}
	#asRead(nm) {
		return this.#begun.zeroNm + this.#begun.sign * nm;
	}
	#closeFrame(us, nm) {
		this.#setback(nm);
		this.#standing.add(us, nm);
		this.#tops.frame(this.#step(us, nm));
	}
	/** How far the torque has fallen back on its way up, seen when it comes higher again. */
	#setback(nm) {
		if (nm <= this.#recordNm) {
			this.#lowSinceRecordNm = Math.min(this.#lowSinceRecordNm, nm);
			return;
		}
		const backNm = this.#recordNm - this.#lowSinceRecordNm - SETBACK_SIGMA * this.#begun.frameSigma;
		this.#setbackNm = Math.max(this.#setbackNm, backNm);
		this.#recordNm = nm;
		this.#lowSinceRecordNm = nm;
	}
	#step(atUs, nm) {
		return {
			nm,
			atUs,
			angleDeg: this.#turning.turnedDeg,
			impulseNms: this.#impulse / 2e6,
			workJ: this.#turning.workJ,
			setbackNm: this.#setbackNm
		};
	}
};

// src/pull/detector.ts
/** Finds pulls in a stream of torque samples. State lives in the detector only: the same samples give the same pulls. */
function createPullDetector(settings) {
	return settings.stream === "maxima" ? createMaximaDetector(settings) : new SampleDetector(settings);
}
var SampleDetector = class {
	#settings;
	#rest;
	#recent = new RecentSamples();
	#oneUs = /* @__PURE__ */ new Float64Array(1);
	#oneNm = /* @__PURE__ */ new Float64Array(1);
	#oneDeg = /* @__PURE__ */ new Float64Array(1);
	#pull = null;
	#lastUs = Number.NEGATIVE_INFINITY;
	#lastNm = 0;
	#lastEndUs = null;
	constructor(settings) {
		this.#settings = settings;
		this.#rest = new Rest(settings);
	}
	push(atUs, nm, angleDeg) {
		this.#oneUs[0] = atUs;
		this.#oneNm[0] = nm;
		this.#oneDeg[0] = angleDeg ?? NaN;
		let detected = null;
		this.#take(this.#oneUs, this.#oneNm, this.#oneDeg, 0, 1, (pull) => {
			detected = pull;
		});
		return detected;
	}
	pushBatch(atUs, nm, from, to, angleDeg) {
		const detected = [];
		this.#take(atUs, nm, angleDeg ?? null, from, to, (pull) => detected.push(pull));
		return detected;
	}
	cut(reason) {
		return this.#pull === null ? null : this.#finish(this.#pull, this.#broken(reason));
	}
	live() {
		const zeroNm = this.#pull?.zeroNm ?? this.#rest.zeroNm;
		return {
			nowNm: this.#lastNm - zeroNm,
			pulling: this.#pull !== null,
			peakNm: this.#pull?.peakNm ?? 0
		};
	}
	#take(atUs, nm, angleDeg, from, to, give) {
		for (let i = from; i < to;) {
			const first = i;
			const pull = this.#pull;
			i = pull === null ? this.#rest.run(atUs, nm, i, to) : pull.run(atUs, nm, angleDeg, i, to);
			if (i > first) {
				this.#lastUs = atUs[i - 1] ?? NaN;
				this.#lastNm = nm[i - 1] ?? NaN;
				const ended = pull === null ? null : this.#ended(pull);
				if (ended !== null) give(ended);
				continue;
			}
			const t = atUs[i] ?? NaN;
			const x = nm[i] ?? NaN;
			if (!(t >= this.#lastUs && Number.isFinite(t) && Number.isFinite(x))) throw new RangeError(`sample ${i}: torque ${x} at ${t} µs, behind ${this.#lastUs} µs`);
			const detected = this.#turningPoint(t, x, angleDeg === null ? NaN : angleDeg[i] ?? NaN);
			if (detected !== null) give(detected);
			if (this.#pull === null) i++;
		}
	}
	/** A sample that does not go on from the one before: behind a gap, beyond rest, or the other way. */
	#turningPoint(atUs, nm, angleDeg) {
		const pull = this.#pull;
		const gap = atUs - this.#lastUs > HOLE_US;
		const stoodNm = gap ? null : pull?.standsNm ?? null;
		const detected = pull === null || pull.neverMoved && !gap ? null : this.#finish(pull, this.#broken(gap ? "link-lost" : null));
		this.#pull = null;
		this.#lastUs = atUs;
		this.#lastNm = nm;
		if (this.#rest.beyond(nm)) {
			const start = started(atUs, nm, this.#rest, {
				endUs: this.#lastEndUs,
				stoodNm
			});
			this.#pull = new PullUnderWay(this.#settings, start, this.#recent, nm, angleDeg);
		} else this.#rest.begin(atUs, nm);
		return detected;
	}
	/** The pull, where the sample just taken has ended it. */
	#ended(pull) {
		const { rested } = pull;
		const stood = rested === null ? pull.stoodAt : null;
		if (rested === null && stood === null) return null;
		const ending = rested ?? (stood?.pulled === true ? stood.ending : null);
		const detected = ending === null ? null : this.#finish(pull, ending);
		this.#pull = null;
		if (stood !== null) this.#rest.jump(stood.nm, stood.count);
		this.#rest.begin(this.#lastUs, this.#lastNm);
		return detected;
	}
	/** An end that shows nothing of what came behind. */
	#broken(cut) {
		return {
			endUs: this.#lastUs,
			cut,
			afterNm: null
		};
	}
	#finish(pull, ending) {
		this.#pull = null;
		const detected = pull.finish(ending);
		if (detected !== null) this.#lastEndUs = ending.endUs;
		return detected;
	}
};

// src/job/feed.ts
function newFeed({ exponent, quantity }, source, settings) {
	return {
		exponent,
		quantity,
		source,
		detector: createPullDetector(settings),
		first: 0,
		atUs: [],
		counts: []
	};
}
/** How pulls are looked for in the readings of a tool: below the lowest window of the job, as the tool describes itself. */
function detectionFor(tool, state) {
	const windows = [state.torqueWindow, ...state.basis.firstTorqueWindow === null ? [] : [state.basis.firstTorqueWindow]];
	const lowerNm = Math.min(...windows.map((window) => asWrenchReads(state, window).lowerNm));
	return settingsFor(lowerNm, tool);
}
/** The event of a reading that carries no value of the tool as it is now. */
function notAValue(tool, reading) {
	switch (reading.kind) {
		case "not-known": return {
			type: "value-not-known",
			tool,
			reading: reading.n,
			atUs: reading.atUs
		};
		case "raw": return {
			type: "raw-value",
			tool,
			atUs: reading.atUs,
			source: reading.source,
			hex: reading.hex
		};
		case "missed": return {
			type: "readings-missed",
			tool,
			fromUs: reading.fromUs,
			toUs: reading.atUs,
			...reading.readings !== void 0 && { readings: reading.readings },
			reason: reading.reason
		};
		case "stored": {
			const { n, atUs, counts } = reading;
			return {
				type: "value-stored",
				tool,
				reading: n,
				atUs,
				counts
			};
		}
	}
}

// src/pull/rounded.ts
/** A pull with no more digits than mean something: torque to a millionth of a N·m, times to a microsecond. */
function roundedPull(pull) {
	const { releaseNm, dropShare, turn, sinceLastMs } = pull;
	return {
		...pull,
		peakNm: rounded(pull.peakNm, 6),
		peakStandardNm: rounded(pull.peakStandardNm, 6),
		highestNm: rounded(pull.highestNm, 6),
		releaseNm: releaseNm === null ? null : rounded(releaseNm, 6),
		dropShare: dropShare === null ? null : rounded(dropShare, 6),
		riseMs: rounded(pull.riseMs, 3),
		rise: roundedRise(pull.rise),
		turn: turn === null ? null : roundedTurn(turn),
		sinceLastMs: sinceLastMs === null ? null : rounded(sinceLastMs, 3),
		zeroNm: rounded(pull.zeroNm, 6),
		noiseNm: rounded(pull.noiseNm, 6),
		intervalUs: rounded(pull.intervalUs, 1)
	};
}
const roundedRise = ({ reachedMs, slopeAtTopNmPerS, impulseNms, setbackNm }) => ({
	reachedMs: reachedMs.map((atMs) => rounded(atMs, 3)),
	slopeAtTopNmPerS: rounded(slopeAtTopNmPerS, 3),
	impulseNms: rounded(impulseNms, 6),
	setbackNm: rounded(setbackNm, 6)
});
const roundedTurn = ({ startToPeakDeg, from10PercentDeg, from50PercentDeg, workJ }) => ({
	startToPeakDeg: rounded(startToPeakDeg, 3),
	from10PercentDeg: rounded(from10PercentDeg, 3),
	from50PercentDeg: rounded(from50PercentDeg, 3),
	workJ: rounded(workJ, 6)
});

// src/job/take-pull.ts
/** After this pause nobody goes on from a stroke. */
const SETTLED_US = 1e3 * SETTLED_MS;
function takePull(bench, tool, source, detected) {
	const pull = {
		...roundedPull(detected),
		pull: bench.state().pullCount + 1,
		tool,
		source
	};
	if (bench.stroke !== null && pull.startUs - bench.stroke.endUs >= SETTLED_US) settleStroke(bench);
	bench.emit({
		type: "pull-detected",
		...pull
	});
	const at = situation(bench.state(), bench.pullsBefore);
	const placement = place(pull, at);
	if (at.last?.asked != null && placement.ask === at.last.asked) handOverQuestion(bench, pull);
	placed(bench, pull, placement);
	const old = oldPlugAtHand(bench.state());
	if (placement.kind === "loosening" && old !== null) bench.emit({
		type: "removal-felt",
		cylinder: old,
		pull: pull.pull
	});
	bench.stroke = strokeAfter(bench, pull, placement);
}
/** A question goes over to the stroke that went on from the one that raised it. */
function handOverQuestion(bench, pull) {
	const before = attemptOf(bench.state(), pull.pull - 1);
	if (before?.kind !== "unsure") return;
	const { cylinder } = before;
	placed(bench, before.pull, {
		cylinder,
		kind: "run-down",
		because: "other-pull-went-on",
		otherPull: pull.pull
	});
}
function strokeAfter(bench, pull, { kind }) {
	if (kind === "run-down") return {
		pull: pull.pull,
		endUs: pull.endUs
	};
	return kind === "handling" ? bench.stroke : null;
}
/** Nothing followed the last stroke: it was not on the way to anything. */
function settleStroke(bench) {
	const attempt = bench.stroke === null ? void 0 : attemptOf(bench.state(), bench.stroke.pull);
	bench.stroke = null;
	if (attempt === void 0 || attempt.cylinder === null || attempt.kind !== "run-down") return;
	const { pull, cylinder, evidence } = attempt;
	const state = bench.state();
	const { lowerNm } = asWrenchReads(state, torqueWindowOf(state, cylinder));
	const at = {
		lowerNm,
		short: stoppedShort(state, cylinder, pull.pull)
	};
	placed(bench, pull, settle(pull, cylinder, evidence, at));
}
/** No more samples come from this tool: a pull under way will never be whole. */
function cutPull(bench, tool, feed, reason) {
	if (feed === void 0) return;
	const detected = feed.detector.cut(reason);
	if (detected !== null) takePull(bench, tool, feed.source, detected);
}

// src/job/take-link.ts
function startSession(bench, { program, platform }) {
	const before = [...bench.feeds];
	bench.feeds.clear();
	const session = bench.state().session + 1;
	bench.emit({
		type: "session-started",
		session,
		program,
		platform
	});
	for (const [tool, feed] of before) cutPull(bench, tool, feed, "stopped");
	settleStroke(bench);
	bench.pullsBefore = bench.state().pullCount;
}
function takeLink(bench, { tool, driver, source }, to) {
	if (to.state !== "linked" && to.state !== "lost") return;
	const before = bench.feeds.get(tool);
	if (to.state === "lost" && before === void 0) return;
	bench.flushAll();
	bench.feeds.delete(tool);
	if (to.state === "linked") {
		const { description } = to;
		const detection = detectionFor(description, bench.state());
		bench.feeds.set(tool, newFeed(description, source, detection));
		const looked = description.quantity === "torque" ? { detection } : {};
		bench.emit({
			type: "tool-linked",
			tool,
			driver,
			source,
			description,
			...looked
		});
		const wider = declared(bench.state(), tool, to.description);
		if (wider !== null) bench.emit(wider);
	} else {
		const { state: _lost, ...end } = to;
		bench.emit({
			type: "tool-lost",
			tool,
			...end
		});
	}
	cutPull(bench, tool, before, "link-lost");
	if (before?.quantity === "torque") settleStroke(bench);
}

// src/job/take-reading.ts
/** A reading of a tool: samples of a wrench are kept until they are worth writing, a figure of a gauge is judged at once. */
/** How long samples may wait in memory: while a pull is under way, and at rest. */
const KEEP_PULLING_US = 5e5;
const KEEP_RESTING_US = 1e7;
function takeReading(bench, tool, reading) {
	const feed = bench.feeds.get(tool);
	if (feed === void 0) throw new Error(`a reading of ${tool} came before its link`);
	if (reading.kind !== "value") {
		bench.flush(tool, feed);
		bench.emit(notAValue(tool, reading));
		if (reading.kind === "missed") cutPull(bench, tool, feed, "link-lost");
		return;
	}
	if (feed.atUs.length === 0) feed.first = reading.n;
	feed.atUs.push(reading.atUs);
	feed.counts.push(reading.counts);
	if (feed.quantity === "length") takeGap(bench, tool, feed, reading);
	else takeTorque(bench, tool, feed, reading);
}
function takeTorque(bench, tool, feed, { atUs, counts }) {
	const detected = feed.detector.push(atUs, scaled(counts, feed.exponent));
	const waitedUs = atUs - (feed.atUs[0] ?? atUs);
	const keepUs = feed.detector.live().pulling ? KEEP_PULLING_US : KEEP_RESTING_US;
	if (detected !== null || waitedUs >= keepUs) bench.flush(tool, feed);
	if (detected !== null) takePull(bench, tool, feed.source, detected);
	const { stroke } = bench;
	if (stroke === null || feed.detector.live().pulling || atUs - stroke.endUs < SETTLED_US) return;
	bench.flush(tool, feed);
	settleStroke(bench);
}
function takeGap(bench, tool, feed, { n, atUs, counts }) {
	bench.flush(tool, feed);
	const state = bench.state();
	const { gapTarget, gapWindow, order, routine } = state;
	const gapMm = scaled(counts, feed.exponent + 3);
	const measured = {
		tool,
		reading: n,
		atUs,
		source: feed.source
	};
	const old = oldPlugAtHand(state);
	if (old !== null) {
		bench.emit({
			type: "old-gap-measured",
			...measured,
			cylinder: old,
			gapMm
		});
		return;
	}
	if (routine?.oldPlugs === true && phaseOf(state) === "new-plugs") return;
	if (gapTarget === null || gapWindow === null || gapCheckOf(order.specification) !== "gauge") return;
	const judgement = judgedReading(state, tool, gapMm, gapWindow, null);
	bench.emit({
		type: "gap-measured",
		...measured,
		cylinder: gapTarget,
		judgement
	});
}

// src/job/bench.ts
/**
* One job on the bench: readings, links and commands in, events out. It keeps samples until they are worth writing,
* finds pulls, gives them to cylinders and judges them. Deterministic: the same inputs give the same events.
*/
function createBench(opened) {
	const bench = new BenchState(opened);
	return {
		accept(input) {
			const refusal = input.kind === "command" ? refused(bench.state(), input.command, bench.pulling()) : null;
			if (refusal !== null) return err({
				code: "command-refused",
				message: refusal,
				next: "Look at the screen and choose again."
			});
			return ok(bench.eventsOf(() => take(bench, input)));
		},
		state: bench.state,
		live: () => live(bench)
	};
}
function take(bench, input) {
	switch (input.kind) {
		case "session":
			startSession(bench, input);
			break;
		case "link":
			takeLink(bench, input, input.link);
			break;
		case "reading":
			takeReading(bench, input.tool, input.reading);
			break;
		case "refusal":
			bench.emit({
				type: "device-refused",
				tool: input.tool,
				...input.refusal
			});
			break;
		case "command":
			takeCommand(bench, input.command);
			break;
		case "flush": bench.flushAll();
	}
}
function takeCommand(bench, command) {
	bench.flushAll();
	const event = eventOf(command);
	if (event !== null) bench.emit(event);
	else follow(bench, command);
}
function live({ feeds, state }) {
	const seen = [...feeds.values()].find((feed) => feed.quantity === "torque")?.detector.live() ?? null;
	const gain = leverage(crowfootOf(state().order.adapter));
	return seen && {
		...seen,
		nowNm: gain * seen.nowNm,
		peakNm: gain * seen.peakNm
	};
}

// src/instrument/certificate.ts
/** A problem of a certificate with its field. */
function certificateProblem(code, { number }, field, message, next) {
	return {
		code,
		where: `certificate ${number}: ${field}`,
		message,
		next
	};
}

// src/instrument/fitness.ts
const wanted = ({ quantity }) => quantity === "torque" ? "N.m" : "mm";
/**
* What is wrong with the description of an instrument, so that nothing can rest on it and nobody can override it; null if
* nothing is. Problems: `permissible-deviation-missing`, `certificate-other-serial`, `certificate-in-future`, `range-reversed`,
* `certificate-unit`, `serial-missing`.
*/
function misdescribed(instrument, on) {
	const { id, certificate, permissibleDeviation, serial } = instrument;
	if (certificate === void 0) return permissibleDeviation === void 0 ? {
		code: "permissible-deviation-missing",
		where: `tool ${id}: permissibleDeviation`,
		message: "the permissible deviation is missing",
		next: "Give its certificate, or the limits of its class or data sheet."
	} : null;
	if (serial === void 0) return {
		code: "serial-missing",
		where: `tool ${id}: serial`,
		message: `certificate ${certificate.number} is for serial number ${certificate.serial}; this tool has none`,
		next: "Give the serial number on the tool."
	};
	if (serial !== certificate.serial) return certificateProblem("certificate-other-serial", certificate, "serial", `it is for serial number ${certificate.serial}, but tool ${id} is ${serial}`, "Use the certificate of this tool.");
	if (certificate.date > on) return certificateProblem("certificate-in-future", certificate, "date", `it is dated ${certificate.date}, after the day of the job, ${on}`, "Check the date of the certificate and the clock of this computer.");
	if (certificate.due !== void 0 && certificate.due < certificate.date) return certificateProblem("certificate-dates", certificate, "due", `it is due on ${certificate.due}, before its own date, ${certificate.date}`, "Give the last day on which the certificate holds.");
	if (certificate.unit !== wanted(instrument)) return certificateProblem("certificate-unit", certificate, "unit", `its points are in ${certificate.unit}; tool ${id} measures in ${wanted(instrument)}`, "Use the certificate of this tool.");
	return null;
}
/** The last day on which the certificate may be relied on; null where nobody set one. */
function dueDate({ certificate, interval }) {
	if (certificate === void 0) return null;
	const byInterval = interval === void 0 ? null : monthsLater(certificate.date, interval.months);
	const stated = certificate.due ?? byInterval;
	return byInterval !== null && stated !== null && byInterval < stated ? byInterval : stated;
}

// src/instrument/unfit.ts
/** Why an instrument should not be used for this task; empty when it may be. */
function unfit(instrument, task) {
	const { range, certificate, interval, cyclesUsed, outOfTolerance } = instrument;
	const refusals = [];
	const due = dueDate(instrument);
	const unit = unitOf(instrument);
	const needed = {
		neededFrom: rounded(task.from, 6),
		neededTo: rounded(task.to, 6)
	};
	if (outOfTolerance !== void 0) refusals.push({
		code: "out-of-tolerance",
		unit,
		...outOfTolerance
	});
	if (due !== null && due < task.on) refusals.push({
		code: "calibration-expired",
		due
	});
	if (interval?.cycles !== void 0 && cyclesUsed !== void 0 && cyclesUsed > interval.cycles) refusals.push({
		code: "cycles-used-up",
		used: cyclesUsed,
		permitted: interval.cycles
	});
	if (range !== void 0 && !covers(range, task)) refusals.push({
		code: "out-of-range",
		unit,
		...range,
		...needed
	});
	if (certificate !== void 0) {
		const readings = certificate.points.map(({ reading }) => reading);
		const calibrated = {
			from: Math.min(...readings),
			to: Math.max(...readings)
		};
		if (!covers(calibrated, task)) refusals.push({
			code: "outside-calibration",
			unit,
			...calibrated,
			...needed
		});
	}
	return refusals;
}
const covers = (span, task) => order(task.from, span.from) >= 0 && order(task.to, span.to) <= 0;
/** The field of the instrument that it is about, what is wrong, and what to do. */
function problemOf(refusal) {
	const { code } = refusal;
	switch (code) {
		case "out-of-tolerance": return {
			code,
			where: "certificate",
			message: `it was out of tolerance on ${refusal.on} (${refusal.impact}): ${offBy(refusal, refusal.unit)} and cannot be used`,
			next: "Have it adjusted and calibrated, and give the certificate of that day or later."
		};
		case "calibration-expired": return {
			code,
			where: "certificate.due",
			message: `its calibration expired on ${refusal.due}`,
			next: "Have it calibrated."
		};
		case "cycles-used-up": return {
			code,
			where: "cyclesUsed",
			message: `it has done ${refusal.used} cycles since its calibration; ${refusal.permitted} are allowed`,
			next: "Have it calibrated."
		};
		case "out-of-range": return {
			code,
			where: "range",
			message: `it may be used ${spanWords(refusal)}`,
			next: "Use one of another size."
		};
		case "outside-calibration": return {
			code,
			where: "certificate.points",
			message: `it is calibrated ${spanWords(refusal)}`,
			next: "Use one that is calibrated there, or have more points calibrated."
		};
	}
}
const UNIT = {
	"N.m": "N·m",
	mm: "mm"
};
const significant = (value) => String(Number(value.toPrecision(4)));
/** Unit of an instrument's figures. */
const unitOf = ({ quantity }) => quantity === "torque" ? "N.m" : "mm";
/** How far off it was, as words: "off by -1.1 N·m at 30 N·m". */
const offBy = ({ reading, error }, unit) => `off by ${error > 0 ? "+" : ""}${significant(error)} ${UNIT[unit]} at ${significant(reading)} ${UNIT[unit]}`;
const spanWords = (refusal) => `from ${significant(refusal.from)} to ${significant(refusal.to)} ${UNIT[refusal.unit]}; this job asks for ${significant(refusal.neededFrom)} to ${significant(refusal.neededTo)} ${UNIT[refusal.unit]}`;

// src/plug/friction.ts
const COS_HALF_FLANK = Math.cos(Math.PI / 6);
/** Motosh's decomposition T = F·(P/2π + µt·rt/cos 30° + µn·rn); VDI 2230 writes the same with 0.16 and 0.58. */
function torqueParts(joint, threadFriction, bearingFriction) {
	const pitch = joint.pitchMm / (2 * Math.PI);
	const thread = threadFriction * joint.threadRadiusMm / COS_HALF_FLANK;
	const bearing = bearingFriction * joint.bearingRadiusMm;
	return {
		pitch,
		thread,
		bearing,
		total: pitch + thread + bearing
	};
}
const THREADS = {
	M8x1: [8, 1],
	M10x1: [10, 1],
	"M12x1.25": [12, 1.25],
	"M14x1.25": [14, 1.25],
	"M18x1.5": [18, 1.5]
};
/** Mean radius of the seat ring over thread diameter: 14.5 to 20.5 mm on M14, the same shape on the others. Assumption. */
const SEAT_SHARE = 8.75 / 14;
/** The joint that a plug makes with its head; the pitch diameter is that of ISO 724. */
function plugJoint(thread) {
	const [diameterMm, pitchMm] = THREADS[thread];
	return {
		pitchMm,
		threadRadiusMm: (diameterMm - .649519 * pitchMm) / 2,
		bearingRadiusMm: SEAT_SHARE * diameterMm
	};
}
/** Torque for the same clamp force after friction went from `dry` to `lubricated`, as a share of the torque before. */
function lubricatedShare(thread, dry, lubricated) {
	const joint = plugJoint(thread);
	return torqueParts(joint, lubricated, lubricated).total / torqueParts(joint, dry, dry).total;
}

// src/plug/general-table.ts
const SOURCES = {
	catalogue: {
		cited: "NGK, European catalogue 2016/17",
		unit: "N.m",
		threads: "dry"
	},
	chart: {
		cited: "NGK, installation chart, US edition",
		unit: "[ft_i].[lbf_av]",
		threads: "dry"
	},
	standard: {
		cited: "NGK, general standard, Japanese edition",
		unit: "N.m",
		threads: "dry"
	},
	trade: {
		cited: "Autoland Brunn, trade table for new plugs",
		unit: "N.m",
		threads: "lightly oiled"
	},
	single: {
		cited: "Iskra Kielce, table of single figures",
		unit: "N.m",
		threads: "not stated"
	},
	university: {
		cited: "LSU AgCenter, Spark Plug Tightening Torque, 2006",
		unit: "[ft_i].[lbf_av]",
		threads: "not stated"
	},
	torque: {
		cited: "Denso, tightening torque page",
		unit: "N.m",
		threads: "dry"
	}
};
const both = (lower, upper) => [[lower, upper], [lower, upper]];
const TABLES = {
	catalogue: {
		"M10x1/gasket": [[10, 15], [10, 12]],
		"M12x1.25/gasket": [[15, 25], [15, 20]],
		"M14x1.25/gasket": [[25, 35], [25, 30]],
		"M18x1.5/gasket": [[35, 45], [35, 40]],
		"M14x1.25/conical": [[15, 25], [10, 20]],
		"M18x1.5/conical": both(20, 30)
	},
	chart: {
		"M8x1/gasket": [null, [5.8, 7.2]],
		"M10x1/gasket": [[7.2, 10.8], [7.2, 8.7]],
		"M12x1.25/gasket": [[10.8, 18], [10.8, 14.5]],
		"M14x1.25/gasket": [[18, 25.3], [18, 21.6]],
		"M18x1.5/gasket": both(25.3, 32.5),
		"M14x1.25/conical": [[10.8, 18], [7.2, 14.5]],
		"M18x1.5/conical": both(14.5, 21.6)
	},
	standard: {
		"M8x1/gasket": both(8, 10),
		"M10x1/gasket": both(10, 12),
		"M12x1.25/gasket": both(15, 20),
		"M14x1.25/gasket": both(25, 30),
		"M18x1.5/gasket": both(35, 40),
		"M14x1.25/conical": both(10, 20),
		"M18x1.5/conical": both(10, 20)
	},
	trade: {
		"M10x1/gasket": both(10, 15),
		"M12x1.25/gasket": both(15, 25),
		"M14x1.25/gasket": [[20, 40], [20, 30]],
		"M18x1.5/gasket": [[30, 45], [20, 35]],
		"M14x1.25/conical": [[20, 25], [15, 25]],
		"M18x1.5/conical": [[20, 30], [15, 23]]
	},
	single: {
		"M10x1/gasket": both(14, 14),
		"M14x1.25/gasket": [[35, 35], [28, 28]],
		"M18x1.5/gasket": [[40, 40], [35, 35]],
		"M14x1.25/conical": both(20, 20),
		"M18x1.5/conical": [[30, 30], [20, 20]]
	},
	university: {
		"M10x1/gasket": both(7, 11),
		"M12x1.25/gasket": both(11, 19),
		"M14x1.25/gasket": [[26, 29], [15, 22]],
		"M18x1.5/gasket": [[32, 38], [28, 34]],
		"M14x1.25/conical": both(7, 15),
		"M18x1.5/conical": both(15, 20)
	},
	torque: { "M8x1/gasket": both(8, 10) }
};
/** What the published tables say; empty where none has a figure. */
function generalTable({ thread, seat, head }) {
	return Object.keys(SOURCES).flatMap((id) => {
		const pair = TABLES[id][`${thread}/${seat}`]?.[head === "aluminium" ? 1 : 0] ?? null;
		if (pair === null) return [];
		const [lower, upper] = pair;
		const unit = SOURCES[id].unit === "N.m" ? "N·m" : "lbf·ft";
		const printed = lower === upper ? `${lower} ${unit}` : `${lower}-${upper} ${unit}`;
		return [{
			...SOURCES[id],
			printed,
			lower,
			upper
		}];
	});
}

// src/plug/plausibility.ts
/** Figures so far beyond all tables are taken for a slip of the pen. Our own choice. */
const FAR_OFF = 2;
/** The tables for a fit taken together; null where no publisher gives a figure. */
function tableView(fit) {
	const rows = generalTable(fit);
	if (rows.length === 0) return null;
	const limits = rows.map((row) => limitsNm(row));
	const lowerNm = Math.max(...limits.map((row) => row.lowerNm));
	const upperNm = Math.min(...limits.map((row) => row.upperNm));
	const common = rows.every((row) => compareTorque(lowerNm, row) !== "high") ? {
		lowerNm,
		upperNm
	} : null;
	return {
		rows,
		lowestNm: Math.min(...limits.map((row) => row.lowerNm)),
		highestNm: Math.max(...limits.map((row) => row.upperNm)),
		common
	};
}
/** The refusal of a figure that no table comes near; null where it is believable, checked by a person, or in no table. */
function implausible({ torque, checkedBy }, { lowerNm, upperNm }, fit) {
	const table = tableView(fit);
	if (table === null || checkedBy !== void 0) return null;
	if (lowerNm <= FAR_OFF * table.highestNm && upperNm >= table.lowestNm / FAR_OFF) return null;
	return {
		code: "figure-implausible",
		where: "specification.torque",
		message: `${torque} on ${fit.thread} is far from the general tables, which say ${short(table.lowestNm)} to ${short(table.highestNm)} N·m (${fit.seat} seat, ${fit.head} head)`,
		next: "Check figure and unit. If the source gives it, name who checked it in specification.checkedBy."
	};
}
const short = (nm) => String(Number(nm.toFixed(1)));
/** What a reader of the window should know about its figures; none of it is a verdict. */
function notesOn(specification, limits, plug, fit) {
	return [
		...tableNotes(specification, limits, fit),
		...(specification.also ?? []).map(({ torque, threads, source: { kind, title } }) => ({
			code: "source-set-aside",
			source: kind,
			title,
			torque,
			threads
		})),
		...threadNotes(specification, plug),
		...plug.condition === "used" ? [{ code: "plug-used" }] : [],
		...plug.gasket === "used" ? [{ code: "gasket-used" }] : []
	];
}
function tableNotes({ source }, { lowerNm, upperNm }, fit) {
	const table = tableView(fit);
	if (table === null) return [{ code: "no-general-table" }];
	const { lowestNm, highestNm } = table;
	const { seat, head } = fit;
	const within = table.rows.some((row) => compareTorque(lowerNm, row) === "inside" && compareTorque(upperNm, row) === "inside");
	const notes = [];
	if (!within) notes.push({
		code: "outside-general-tables",
		lowestNm,
		highestNm,
		seat,
		head
	});
	if (table.common === null) notes.push({ code: "general-tables-disagree" });
	if (source.kind === "general-table") notes.push({ code: "general-table-used" });
	return notes;
}
/** Clean dry threads, and the same with oil or paste on them: usual figures of the trade. */
const [FRICTION_DRY, FRICTION_LUBRICATED] = [.15, .1];
function threadNotes({ threads, reduction }, plug) {
	if (reduction === void 0) return threads === "dry" ? [{ code: "threads-dry" }] : [];
	const { percent, lubricant } = reduction;
	const usual = (1 - lubricatedShare(plug.thread, FRICTION_DRY, FRICTION_LUBRICATED)) * 100;
	return [{
		code: "torque-reduced",
		percent,
		lubricant
	}, {
		code: "reduction-by-friction",
		frictionDry: FRICTION_DRY,
		frictionLubricated: FRICTION_LUBRICATED,
		percent: Math.round(usual)
	}];
}

// src/plug/precedence.ts
/** The engine maker goes before the plug's box, the box before a general table: every publisher says so. */
const RANK = {
	"engine-maker": 3,
	"plug-box": 2,
	"general-table": 1,
	"invented-example": 0
};
const SOURCE_WORDS = {
	"engine-maker": "the engine maker",
	"plug-box": "the plug box",
	"general-table": "a general table",
	"invented-example": "an invented example"
};
/** The problem of an order that works to a source while a better one is set aside; null when there is none. */
function outranked({ source, also = [] }) {
	const at = also.findIndex((other) => RANK[other.source.kind] > RANK[source.kind]);
	const better = also[at];
	if (better === void 0) return null;
	return {
		code: "source-outranked",
		where: `specification.also[${at}].source.kind`,
		message: `${SOURCE_WORDS[better.source.kind]} says ${better.torque}, which takes precedence over ${SOURCE_WORDS[source.kind]}`,
		next: "Use the better source. Put the other one under \"also\"."
	};
}

// src/job/rules.ts
/**
* The edition of the rules that jobs are opened under now. A job names it in its opening, and is judged by it for good;
* `npm run close-edition` raises it.
*/
const OPEN_EDITION = 1;
const NAME = "plugmark/rules/";
/** The name that a job signs. */
const RULES = `${NAME}${1}`;

// src/job/vin.ts
const LENGTH = 17;
/** Position 9, counted from 0. */
const CHECK_AT = 8;
/** Table III of 49 CFR 565.15(c); digits stand for themselves. */
const VALUES = {
	...Object.fromEntries(Array.from("0123456789", (digit) => [digit, Number(digit)])),
	A: 1,
	B: 2,
	C: 3,
	D: 4,
	E: 5,
	F: 6,
	G: 7,
	H: 8,
	J: 1,
	K: 2,
	L: 3,
	M: 4,
	N: 5,
	P: 7,
	R: 9,
	S: 2,
	T: 3,
	U: 4,
	V: 5,
	W: 6,
	X: 7,
	Y: 8,
	Z: 9
};
/** Table IV; the check digit itself weighs nothing. */
const WEIGHTS = [
	8,
	7,
	6,
	5,
	4,
	3,
	2,
	10,
	0,
	9,
	8,
	7,
	6,
	5,
	4,
	3,
	2
];
/** The VIN as it is compared and looked up: capitals, without the spaces and hyphens that people put in. */
const normalVin = (text) => text.replace(/[\s-]+/g, "").toUpperCase();
/** The character due at position 9 of a normal VIN; null where a character has no value or the length is another. */
function checkDigit(vin) {
	if (vin.length !== LENGTH) return null;
	let sum = 0;
	for (const [i, weight] of WEIGHTS.entries()) {
		const value = VALUES[vin.charAt(i)];
		if (value === void 0) return null;
		sum += weight * value;
	}
	const remainder = sum % 11;
	return remainder === 10 ? "X" : String(remainder);
}
/**
* What is wrong with a VIN as written; null when nothing is. A number of another length is never illegal: vehicles from
* before model year 1981 have shorter ones.
*/
function vinFault(text) {
	const vin = normalVin(text);
	if (vin.length !== LENGTH) return fault(false, "vin-length", `the VIN has ${vin.length} characters; expected ${LENGTH}`);
	const northAmerican = /^[1-5]/.test(vin);
	const strange = [...vin].find((character) => VALUES[character] === void 0);
	if (strange !== void 0) return fault(northAmerican, "vin-character", strangeText(strange));
	const due = checkDigit(vin);
	const actual = vin.charAt(CHECK_AT);
	if (due === actual) return null;
	return fault(northAmerican, "vin-check-digit", `the check digit of the VIN is ${actual}; expected ${due}${northAmerican ? "" : ", though not every market uses it"}`);
}
function strangeText(character) {
	const instead = {
		I: "1",
		O: "0",
		Q: "0 or 9"
	}[character];
	if (instead === void 0) return "the VIN holds a character that is neither a letter A to Z nor a digit";
	return `the VIN holds the letter ${character}, which none has; it may be ${instead}`;
}
function fault(illegal, code, message) {
	return {
		illegal,
		problem: {
			code,
			where: "vehicle.vin",
			message,
			next: "Compare it with the vehicle, character by character."
		}
	};
}

// src/job/open.ts
/**
* The opening of a job: order and instruments as they are today, with the windows that every reading will be held
* against. Fails where a figure of the order cannot be read or believed, where an instrument is missing, misdescribed or
* unfit and nobody answers for it, or too uncertain to prove anything in this window. Problems name the field.
*/
function openJob(order, instruments, opening) {
	const specified = specifiedBy(order, opening.on);
	if (!specified.ok) return specified;
	const { limits, first, notes, gap: policy } = specified.value;
	const torque = torqueSide(order, instruments, opening, limits, first);
	if (!torque.ok) return torque;
	const gap = gapSide(order, instruments, opening);
	if (!gap.ok) return gap;
	const { on, decision, routine } = opening;
	return ok([
		{
			type: "job-opened",
			order,
			instruments: [...instruments],
			torqueWindow: torque.value.window,
			gapWindow: gap.value.window,
			basis: {
				on,
				decision,
				firstTorqueWindow: torque.value.first,
				gap: policy,
				notes: [...notes]
			},
			rules: RULES,
			...routine === void 0 ? {} : { routine }
		},
		...torque.value.overridden,
		...gap.value.overridden
	]);
}
/** The figures of an order, checked against sources and tables; `on` is the day of the job. */
function specifiedBy(order, on) {
	const { specification, plug, engine, vehicle } = order;
	const vin = vehicle.vin === void 0 ? null : vinFault(vehicle.vin);
	if (vin?.illegal === true) return err(vin.problem);
	const future = notYet(specification, on);
	if (future !== null) return err(future);
	const better = outranked(specification);
	if (better !== null) return err(better);
	const tightening = tighteningOf(specification);
	if (!tightening.ok) return tightening;
	if (tightening.value.kind === "angle") return err({
		code: "angle-not-provable",
		where: "specification.torque",
		message: "the specification is an angle; a torque wrench cannot prove it",
		next: "Give the torque from the same source. Put the angle into specification.angle."
	});
	const { limits, first } = tightening.value;
	const fit = {
		thread: plug.thread,
		seat: plug.seat,
		head: engine.headMaterial
	};
	const wrong = implausible(specification, limits, fit);
	if (wrong !== null) return err(wrong);
	const policy = gapPolicyOf(specification, plug);
	if (!policy.ok) return policy;
	const notes = notesOn(specification, limits, plug, fit);
	return ok({
		limits,
		first,
		notes,
		gap: policy.value
	});
}
function notYet({ source, also = [] }, on) {
	const dates = [source, ...also.map((other) => other.source)].map(({ date }) => date);
	const at = dates.findIndex((date) => date !== void 0 && date > on);
	if (at < 0) return null;
	return {
		code: "source-in-future",
		where: at === 0 ? "specification.source.date" : `specification.also[${at - 1}].source.date`,
		message: `the source is dated ${dates[at]}, after the day of the job, ${on}`,
		next: "Check the date of the source and the clock of this computer."
	};
}
function torqueSide(order, instruments, opening, limits, first) {
	const wrench = instruments.find(({ quantity }) => quantity === "torque");
	if (wrench === void 0) return err(missing("torque wrench", "torque"));
	const steps = first === null ? [limits] : [limits, first];
	const fit = fitFor(wrench, order, opening, {
		lower: Math.min(...steps.map(({ lowerNm }) => lowerNm)),
		upper: Math.max(...steps.map(({ upperNm }) => upperNm))
	});
	if (!fit.ok) return fit;
	const circumstances = {
		on: opening.on,
		adapter: order.adapter
	};
	const { rule } = opening.decision;
	const [window, firstWindow] = steps.map(({ lowerNm, upperNm }) => windowFor(wrench, {
		lower: lowerNm,
		upper: upperNm
	}, circumstances, rule));
	if (window === void 0) throw new Error("a tightening without limits");
	const problem = undecidable(window, `tool ${wrench.id}`, rule) ?? (firstWindow === void 0 ? null : undecidable(firstWindow, `tool ${wrench.id}, first step`, rule));
	if (problem !== null) return err(problem);
	return ok({
		window,
		first: firstWindow ?? null,
		overridden: fit.value
	});
}
function gapSide(order, instruments, opening) {
	const { specification, plug } = order;
	const limits = gapLimitsOf(specification, plug);
	if (!limits.ok) return limits;
	const check = gapCheckOf(specification);
	if (limits.value === null || check === "visual-only" || check === "not-permitted") return ok({
		window: null,
		overridden: []
	});
	const { lowerMm: lower, upperMm: upper } = limits.value;
	const { rule } = opening.decision;
	if (check === "wire") {
		const wires = wiresOf(specification);
		if (!wires.ok) return wires;
		const { goMm, noGoMm, withinMm } = wires.value;
		const expandedAt = () => expandedWithin(withinMm);
		const window = windowBy(rule, {
			unit: "mm",
			lowerLimit: lower,
			upperLimit: upper,
			expandedAt
		});
		if (goMm >= window.acceptLower && noGoMm <= window.acceptUpper) return ok({
			window,
			overridden: []
		});
		return err({
			code: "window-not-decidable",
			where: "specification.gapRules.wires",
			message: `a plug that fits these wires lies between ${goMm} and ${noGoMm} mm, which is not within ${specification.gap ?? ""} less the guard band`,
			next: `Take wires between ${window.acceptLower.toFixed(3)} and ${window.acceptUpper.toFixed(3)} mm.`
		});
	}
	const gauge = instruments.find(({ quantity }) => quantity === "length");
	if (gauge === void 0) return err(missing("gap gauge", "length"));
	const fit = fitFor(gauge, order, opening, {
		lower,
		upper
	});
	if (!fit.ok) return fit;
	const window = windowFor(gauge, {
		lower,
		upper
	}, {
		on: opening.on,
		adapter: void 0
	}, rule);
	const problem = undecidable(window, `tool ${gauge.id}`, rule);
	return problem === null ? ok({
		window,
		overridden: fit.value
	}) : err(problem);
}
/** What a supervisor has to answer for so that the instrument may be used; a problem where none does. */
function fitFor(instrument, order, { on, overrides }, limits) {
	const wrong = misdescribed(instrument, on);
	if (wrong !== null) return err(wrong);
	const circumstances = {
		on,
		adapter: order.adapter
	};
	const from = readingFor(instrument, limits.lower, circumstances);
	const to = readingFor(instrument, limits.upper, circumstances);
	const reasons = unfit(instrument, {
		on,
		from,
		to
	});
	const [refusal] = reasons;
	if (refusal === void 0) return ok([]);
	const given = overrides.find(({ tool }) => tool === instrument.id);
	if (given === void 0) return err({
		...inTool(problemOf(refusal), instrument),
		answerableFor: instrument.id
	});
	return ok(reasons.map((reason) => ({
		type: "instrument-overridden",
		tool: instrument.id,
		refusal: reason,
		by: given.by,
		reason: given.reason
	})));
}
const inTool = (problem, { id }) => ({
	...problem,
	where: `tool ${id}: ${problem.where}`
});
function missing(what, quantity) {
	return {
		code: "instrument-missing",
		where: "tools",
		message: `the station has no ${what}`,
		next: `Add a tool with "quantity": "${quantity}" to the station file.`
	};
}

// src/job/parting.ts
const WORDS = {
	"no-opening": () => "the job does not start with its opening",
	"event-not-known": (event) => `these rules know no ${event}`,
	"not-to-be-opened": () => "it could not have been opened so",
	"other-windows": () => "its windows are not what the order and the instruments give",
	"from-nothing": (event) => `${event}, but the readings give nothing here`,
	"other-than-readings": (event) => `${event} is not what the readings give`,
	"left-out": (event) => `${event} is missing here`,
	"readings-not-in-order": (event) => `the readings in ${event} do not follow the last ones`,
	"source-not-of-link": (event) => `the source in ${event} does not fit the kind of its link`,
	"not-an-input": (event) => `${event} cannot have come from a tool`,
	"not-to-be-accepted": (event) => `${event} would have been refused here`,
	"other-than-input": (event) => `${event} is not what the job writes here`,
	"other-close": () => "the close of the job does not follow from its events"
};
const partingText = ({ code, event }) => WORDS[code](event);
/** `because` is what the rules themselves had to say, where they did. */
function partedProblem(position, code, event, because) {
	const said = because === void 0 ? "" : `: ${because}`;
	return {
		code: "judged-otherwise",
		where: `event ${position}`,
		message: `${partingText({
			code,
			event
		})}${said}`,
		next: "Do not rely on this record; keep it and ask the station for its log.",
		parting: {
			position,
			code,
			event
		}
	};
}

// src/job/reading-numbers.ts
/** The numbers that drivers give to readings: within a session those of a tool rise by one, whatever became of each. */
var ReadingNumbers = class {
	/** By tool, the number that is due. Where a session begins is the driver's affair. */
	#due = /* @__PURE__ */ new Map();
	/** Whether the readings in an event follow those before it. */
	follow(event) {
		switch (event.type) {
			case "session-started":
				this.#due.clear();
				return true;
			case "readings": return this.#take(event.tool, event.first, event.count);
			case "value-stored":
			case "value-not-known": return this.#take(event.tool, event.reading, 1);
			case "readings-missed":
			case "raw-value": {
				const due = this.#due.get(event.tool);
				if (due !== void 0) this.#due.set(event.tool, due + 1);
				return true;
			}
			default: return true;
		}
	}
	#take(tool, first, count) {
		const due = this.#due.get(tool);
		this.#due.set(tool, first + count);
		return due === void 0 || first === due;
	}
};

// src/job/replay.ts
/** What the rules make of inputs; everything else in a job's log is input. */
const DERIVED = /* @__PURE__ */ new Set([
	"uncertainty-declared",
	"gap-measured",
	"old-gap-measured",
	"removal-felt",
	"pull-detected",
	"pull-placed",
	"job-closed"
]);
/**
* Feeds a job's recorded inputs through a new bench and holds every pull, placement and verdict that comes out against
* the recorded one. Returns the bench as it stood at the end, or the first place where the two part. This is both how
* a job goes on after a stop and how it is judged again, years later, from its record alone.
*/
function replay(events) {
	const [opened, ...rest] = events;
	if (opened?.type !== "job-opened") return parted(1, "no-opening", opened?.type ?? "job-opened");
	if (opened.rules !== "plugmark/rules/1") return err({
		code: "rules-differ",
		message: `the job was opened under ${opened.rules}; this program works under ${RULES}`,
		next: "Finish it with the version of the program that opened it, or declare it void and open it anew."
	});
	const opening = openedAgain(opened, rest);
	if (opening !== null) return opening;
	const bench = createBench(fold(null, opened));
	const numbers = new ReadingNumbers();
	let expected = [];
	for (const [i, event] of rest.entries()) {
		const at = i + 2;
		if (DERIVED.has(event.type) && event.type !== "job-closed") {
			const [due, ...later] = expected;
			if (due === void 0) return parted(at, "from-nothing", event.type);
			if (!isDeepStrictEqual(due, event)) return parted(at, "other-than-readings", event.type);
			expected = later;
			continue;
		}
		if (expected[0] !== void 0) return parted(at, "left-out", expected[0].type);
		if (!numbers.follow(event)) return parted(at, "readings-not-in-order", event.type);
		if (!sourceFits(event)) return parted(at, "source-not-of-link", event.type);
		const inputs = inputsOf(event);
		if (!inputs.ok) return parted(at, "not-an-input", event.type, inputs.error.message);
		const derived = [];
		for (const input of inputs.value) {
			const out = bench.accept(input);
			if (!out.ok) return parted(at, "not-to-be-accepted", event.type, out.error.message);
			derived.push(...out.value.filter(({ type }) => DERIVED.has(type)));
			const again = out.value.find(({ type }) => !DERIVED.has(type) && type !== "readings");
			if (event.type !== "readings" && event.type !== "job-closed" && !isDeepStrictEqual(again, event)) return parted(at, "other-than-input", event.type);
		}
		if (event.type === "job-closed" && !isDeepStrictEqual(derived.pop(), event)) return parted(at, "other-close", event.type);
		expected = derived;
	}
	if (expected[0] !== void 0) return parted(events.length + 1, "left-out", expected[0].type);
	return ok(bench);
}
/** The windows, the notes and what had to be answered for, worked out again from the order and the instruments. */
function openedAgain(opened, rest) {
	const overridden = rest.filter((event) => event.type === "instrument-overridden");
	const { order, instruments, basis, routine } = opened;
	const asked = routine === void 0 ? {} : { routine };
	const again = openJob(order, instruments, {
		...basis,
		...asked,
		overrides: overridden
	});
	if (!again.ok) return parted(1, "not-to-be-opened", "job-opened", again.error.message);
	const recorded = [opened, ...rest.slice(0, overridden.length)];
	return isDeepStrictEqual(again.value, recorded) ? null : parted(1, "other-windows", "job-opened");
}
const parted = (position, code, event, because) => err(partedProblem(position, code, event, because));
/** What can come over each kind of link. */
const SOURCES_OVER = {
	"bluetooth-le": ["linked", "simulated"],
	direct: ["simulated"],
	file: ["replayed"],
	keyboard: ["typed"]
};
const sourceFits = (event) => event.type !== "tool-linked" || SOURCES_OVER[event.description.link.kind].includes(event.source);
function inputsOf(event) {
	switch (event.type) {
		case "session-started": return ok([{
			kind: "session",
			program: event.program,
			platform: event.platform
		}]);
		case "tool-linked": return ok([{
			kind: "link",
			tool: event.tool,
			driver: event.driver,
			source: event.source,
			link: {
				state: "linked",
				description: event.description
			}
		}]);
		case "tool-lost": {
			const { type: _type, tool, ...end } = event;
			return ok([{
				kind: "link",
				tool,
				driver: "",
				source: "linked",
				link: {
					state: "lost",
					...end
				}
			}]);
		}
		case "readings": {
			const samples = decodeSamples(event);
			if (!samples.ok) return samples;
			return ok(samples.value.counts.map((counts, i) => ({
				kind: "reading",
				tool: event.tool,
				reading: {
					kind: "value",
					n: event.first + i,
					atUs: samples.value.atUs[i] ?? 0,
					counts
				}
			})));
		}
		case "readings-missed": {
			const { type: _type, tool, toUs: atUs, ...missed } = event;
			return ok([{
				kind: "reading",
				tool,
				reading: {
					kind: "missed",
					n: 0,
					atUs,
					...missed
				}
			}]);
		}
		case "value-stored": {
			const { type: _type, tool, reading: n, ...stored } = event;
			return ok([{
				kind: "reading",
				tool,
				reading: {
					kind: "stored",
					n,
					...stored
				}
			}]);
		}
		case "value-not-known": {
			const { tool, reading: n, atUs } = event;
			return ok([{
				kind: "reading",
				tool,
				reading: {
					kind: "not-known",
					n,
					atUs
				}
			}]);
		}
		case "raw-value": {
			const { type: _type, tool, ...raw } = event;
			return ok([{
				kind: "reading",
				tool,
				reading: {
					kind: "raw",
					n: 0,
					...raw
				}
			}]);
		}
		default: {
			const command = commandOf(event);
			return ok(command === null ? [] : [{
				kind: "command",
				command
			}]);
		}
	}
}

// src/rules/budgets.ts
/** A budget for each instrument at each limit. */
function budgetsOf(state) {
	return state.instruments.flatMap((instrument) => {
		const window = instrument.quantity === "torque" ? state.torqueWindow : state.gapWindow;
		if (window === null) return [];
		const circumstances = {
			on: state.basis.on,
			adapter: state.order.adapter
		};
		return [window.lowerLimit, window.upperLimit].map((at) => {
			const reading = readingFor(instrument, at, circumstances);
			const { budget } = measured(instrument, reading, circumstances, null);
			const { standard, coverageFactor, expanded } = budget;
			const rows = budget.rows.map(({ cause, source, type, distribution, amount, sensitivity, ...row }) => ({
				cause,
				source,
				type,
				distribution: distribution.kind,
				amount,
				sensitivity,
				standard: row.standard,
				contribution: row.contribution,
				degreesOfFreedom: finite(row.degreesOfFreedom)
			}));
			const total = {
				standard,
				coverageFactor,
				expanded,
				degreesOfFreedom: finite(budget.degreesOfFreedom)
			};
			return {
				tool: instrument.id,
				unit: window.unit,
				at,
				rows,
				...total
			};
		});
	});
}
const finite = (value) => Number.isFinite(value) ? value : null;

// src/rules/summary.ts
function summaryOf(state) {
	const { closed, sources } = state;
	const { torque, gap } = figuresOf(state);
	return {
		sources: [...sources],
		figures: {
			torque: { ...torque },
			gap: { ...gap }
		},
		cylinders: [...state.cylinders].sort((a, b) => a.cylinder - b.cylinder).map((c) => cylinderSummary(c, isTwoSteps(state))),
		openQuestions: state.questions.length,
		closed: closed === null ? null : {
			complete: closed.complete,
			open: [...closed.open]
		}
	};
}
function cylinderSummary(c, twoSteps) {
	const { cylinder, gap, torque, gaps, pulls, settlement } = c;
	const felt = pulls.map(({ judgement, pull: { source } }) => ({
		judgement,
		source
	}));
	return {
		cylinder,
		gap: quantitySummary(gap, gaps, gapSource(c)),
		torque: quantitySummary(torque, felt, torqueSource(c, twoSteps)),
		...torque === "settled" && settlement !== void 0 ? { settlement: settlementSummary(settlement) } : {},
		answers: pulls.flatMap(({ pull, answer }) => answer === null ? [] : [{
			pull: pull.pull,
			answer
		}])
	};
}
/** Without names and reasons, which are personal: they stand in the entry. */
const settlementSummary = (settlement) => settlement.kind === "accepted" ? {
	kind: "accepted",
	pull: settlement.pull
} : {
	kind: "by-angle",
	turn: settlement.turn
};
/** `standsOn`: the source of what is done. */
function quantitySummary(state, attempts, standsOn) {
	const judged = attempts.filter(({ judgement }) => judgement !== null);
	const stands = state === "done" ? judged.findLast(({ judgement }) => judgement?.result === "OK") : judged.at(-1);
	return {
		state,
		attempts: attempts.length,
		judgement: stands?.judgement ?? null,
		source: standsOn ?? stands?.source ?? null
	};
}

// src/rules/judge.ts
/**
* The open edition of the rules: what is bundled when it is closed (tests/golden/close-edition.ts). All that decides a
* verdict on a job's events is below here; signatures, tree and disclosures are not, and get better for old records too.
*/
/** An event that a later edition added stands in no job of this one. */
const KNOWN = {
	"job-opened": true,
	"instrument-overridden": true,
	"session-started": true,
	"tool-linked": true,
	"uncertainty-declared": true,
	"tool-lost": true,
	readings: true,
	"readings-missed": true,
	"value-stored": true,
	"device-refused": true,
	"value-not-known": true,
	"raw-value": true,
	"gap-measured": true,
	"gap-inspected": true,
	"wire-tried": true,
	"plug-scrapped": true,
	"pull-detected": true,
	"pull-placed": true,
	"pull-given": true,
	"cylinder-left-out": true,
	"cylinder-restarted": true,
	"windows-confirmed": true,
	"steps-attested": true,
	"old-plugs-read": true,
	"old-gap-measured": true,
	"removal-felt": true,
	"new-plugs-checked": true,
	"fitted-by-angle": true,
	"pull-accepted": true,
	"job-handed-over": true,
	"job-voided": true,
	"cylinder-chosen": true,
	"question-answered": true,
	"job-closed": true
};
/** Judges the job again from its samples and commands. */
function judgeAgain(events) {
	const strange = events.findIndex(({ type }) => !Object.hasOwn(KNOWN, type));
	if (strange >= 0) {
		const event = events[strange]?.type ?? "";
		return {
			agrees: false,
			position: strange + 1,
			code: "event-not-known",
			event
		};
	}
	const again = replay(events);
	if (again.ok) return {
		agrees: true,
		pulls: again.value.state().pullCount
	};
	const { error } = again;
	if (!("parting" in error)) throw new Error(error.message);
	return {
		agrees: false,
		...error.parting
	};
}
/** What a record states of the job, worked out from the events as they stand. */
function outcomeOf(events) {
	const state = foldAll(events);
	if (state === null) throw new Error("a job without events");
	const summary = summaryOf(state);
	return {
		summary,
		budgets: [...budgetsOf(state)],
		lacks: lacksIn(state, summary),
		attestedBy: [...proofOf(state).attestedBy]
	};
}
function lacksIn(state, { cylinders, closed }) {
	const items = openItems(state);
	const unproven = cylinders.find(({ gap, torque }) => state.gapWindow !== null && gap.judgement?.result !== "OK" || torque.state !== "settled" && torque.judgement?.result !== "OK");
	return [
		state.voided === null ? null : { code: "voided" },
		items.length === 0 ? null : {
			code: "open",
			items
		},
		unproven === void 0 ? null : {
			code: "unproven",
			cylinder: unproven.cylinder
		},
		closed === null ? { code: "not-closed" } : null,
		closed?.complete === false ? {
			code: "closed-incomplete",
			items: closed.open
		} : null
	].filter((lack) => lack !== null);
}

export { judgeAgain, outcomeOf };