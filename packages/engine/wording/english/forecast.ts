/** How flow and dirt go over the coming days. */
export const forecastSentences: Readonly<Record<string, string>> = {
  'forecast.no-water': 'No water flows.',
  'forecast.no-media': 'There are no media in it yet, so nothing is caught.',
  'loss.quarter': 'a quarter',
  'loss.third': 'a third',
  'loss.half': 'a half',
  'forecast.loss.at': 'by {loss} after {after}',
  'forecast.loss.in': 'by {loss} after {after}, most of it in {place}',
  'forecast.loss.none':
    'Within {days} days the flow at the tank is not down by a quarter; at the least it is {share} of clean.',
  'forecast.loss.all': 'The flow at the tank is down {losing}.',
  'forecast.loss.some': 'The flow at the tank is down {losing}; not by {never} within {days} days.',
  'forecast.end.none':
    'Within {days} days the water through no bed is down by a third, and no overflow opens.',
  'forecast.end.overflow': 'An overflow opens after {after} (within a factor of three): {place}.',
  'forecast.end.bed-flow':
    'The water through a bed is first down by a third after {after} (within a factor of three): {place} decides.',
  'forecast.overflow': 'An overflow opens after {after}: dirty water then goes past the media.',
  'forecast.mat': 'From day {day} a mat of dirt lies on this bed: {place}.',
  'forecast.solids': 'Of {made} of dry solids that are made, {parts}.',
  'forecast.solids.none': 'Of {made} of dry solids that are made, nothing is caught.',
  'forecast.solids.held': '{mass} lie in the beds at the end',
  'forecast.solids.rot': '{mass} rot there',
  'forecast.solids.cleaned': '{mass} are cleaned out',
  'forecast.solids.changed': '{mass} go with the water changes',
  'forecast.solids.elsewhere': '{mass} stay in other filters',
  'forecast.solids.floating': '{mass} still float in the tank',
  'forecast.feed': 'It is reckoned with {fed} of dry feed.',
  'forecast.litter':
    'What plants shed is not counted: in a planted tank it may be as much as what feeding makes, and the days half as long.',
};
