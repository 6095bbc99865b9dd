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
  'warning.few-pieces-across':
    'The chamber is only {pieces} pieces of {medium} wide: more water runs along its walls than is computed.',
  'warning.bed-outside-law':
    'The bed of {medium} lies outside what its law of resistance was measured for, in voidage or speed.',
  'warning.dirt-outside-law':
    'The {medium} holds more dirt than the law of clogging was measured for; it is clogged, but its resistance is a guess.',
  'warning.pump-speed-outside-affinity':
    'Below a third of its speed a pump departs from the affinity laws that are used here.',
  'warning.flow-beyond-pump-curve':
    'The flow lies beyond the last point of the pump’s curve, which is drawn out straight there.',
};
