/** Where figures lie outside what their laws were measured for. */
export const warningSentences: Readonly<Record<string, string>> = {
  'warning.temperature-outside-kinetics':
    'The bacteria were measured between {least} and {most}; colder is drawn out, and warmer their rates fall where the models let them rise.',
  'warning.pH-outside-kinetics':
    'What pH leaves of the bacteria was measured from {least} to {most}; below, the line is drawn out to nothing at {nothing}, above it is taken as full.',
  'warning.no-feed-no-dirt':
    'The tank is not fed, so no dirt is made: what the filter carries is that of clean media.',
  'warning.kinetics-are-fresh-water':
    'The rates of the bacteria were measured in fresh water; salted tanks ripen more slowly and may carry less.',
  'warning.soft-acid-water':
    'Below pH {acid}, or nearly without alkalinity, tanks ripen with other microbes than those that were measured (from memory): the filter may do more than is said, and does less at once when water changes bring the pH up. Nearly all ammonia is harmless ammonium there, until the pH rises.',
  'warning.cold-water':
    'Below {cold} few beds were measured, and bacteria hardly grow: after any cleaning or loss they take months to come back. Feed less in the cold.',
  'warning.sea-water-not-counted':
    'Live rock, deep sand and protein skimmers of a sea tank are not counted, nor what takes nitrate away there: the tank may stand better than is said.',
  'warning.few-pieces-across':
    'The chamber is only {pieces} pieces of {medium} wide: more water runs along its walls than is computed.',
  'warning.bed-outside-law':
    'The bed of {medium} lies outside what its law of resistance was measured for, in voidage or speed.',
  'warning.dirt-outside-law':
    'The {medium} holds more dirt than the law of clogging was measured for; it is clogged, but its resistance is a guess.',
  'warning.interval-below-practice':
    'Cleaning after {time} is sooner than filters are opened as a rule ({soonest}; common practice, no source). The law of clogging was found on sand and is drawn out to this medium, within a factor of 3.5: look at it after some days before you go by the figure, and hold packings against each other by it.',
  'warning.interval-beyond-practice':
    'More than a year until anything clogs is for the dirt of the feed alone. What plants shed, solids above half a millimetre and growth on the media are not counted: look at the media every {look} at least (common practice, no source).',
  'warning.pump-speed-outside-affinity':
    'Below a third of its speed a pump departs from the affinity laws that are used here.',
  'warning.pump-flow-outside-affinity':
    'The dimmed pump gives {share} of what it is rated for at that speed; below a third the affinity laws that are used here are a poor guide.',
  'warning.air-stays-in-hose':
    'Water runs through the {hose} at {speed}; air at its top is carried down only from about {need} on, so that it may stay there and choke the flow.',
  'warning.water-near-boiling':
    'In the {place} the pressure is {pressure} absolute, less than a metre of water above the {boiling} at which water boils: the pump may cavitate and the hose part its water.',
  'warning.air-comes-out':
    'In the {place} the pressure is {below} below the air’s: dissolved air comes out of the water in bubbles, and any leak draws more in.',
  'warning.pump-above-water':
    'The pump stands {above} above the water: it cannot fill its own hose, and has to be primed each time.',
  'warning.water-runs-back':
    'Water runs back through the second pump, {flow} of it: a check valve behind it would hold that.',
  'warning.coil-outside-law': 'The {hose} is coiled more tightly than the law of coils was measured for.',
  'warning.tap-outside-law':
    'The tap of the {hose} is closed further than the law of taps was measured for; its loss is drawn out.',
  'warning.jet-outside-law':
    'The jet (Reynolds number {Re}) is slower than those that the law was measured on; it may spread sooner or later than said.',
  'part.intake-hump': 'highest point of the intake hose',
  'part.housing': 'housing and its lid',
  'part.pump-inlet': 'inlet of the pump',
  'part.pump-outlet': 'outlet of the pump',
  'part.outlet-hump': 'highest point of the outlet hose',
  'warning.air-lift-outside-law':
    'The lift tube lies outside what the law of air-lifts was measured for: bores of 6 to 30 mm, air of up to 4 m/s in the tube, and no slower than a Reynolds number of 500.',
  'warning.air-lift-is-short':
    'The law of air-lifts was held against tubes of several metres; in one of 0.8 m (2.6 ft) it gave up to 1.7 times the flow that was measured, so time this one.',
  'warning.flow-beyond-pump-curve':
    'The flow lies beyond the last point of the pump’s curve, which is drawn out straight there.',
};
