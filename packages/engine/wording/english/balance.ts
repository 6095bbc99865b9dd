/** Where the whole tank settles, and what works on its water. */
export const balanceSentences: Readonly<Record<string, string>> = {
  'balance.no-feed': 'The tank is not fed, so there is no balance to tell.',
  'balance.without-end': 'rising without end',
  'balance.ranged': '{value} ({low} to {high})',
  'balance.levels.clean':
    'With clean media the tank settles at ammonia {ammonia} and nitrite {nitrite}, both as N, and nitrate {nitrate} as NO3.',
  'balance.levels.intervalEnd':
    'With the dirt of the interval’s end: ammonia {ammonia}, nitrite {nitrite}, nitrate {nitrate}.',
  'balance.takers': 'Of {load} of ammonia nitrogen that feed and rotting dirt make, {parts}.',
  'balance.by.filter': 'this filter oxidises {share}',
  'balance.by.other': '“{name}” {share}',
  'balance.by.walls': 'glass and ground {share}',
  'balance.by.plants': 'plants take up {share}',
  'balance.by.changes': 'water changes carry off {share}',
  'balance.by.nothing': '{share} stays in the water and rises',
  'balance.margin':
    'Glass and ground, whose part is {walls}, plants and water changes are margin: what the filter carries counts none of them.',
  'balance.ends': 'In the end {parts}.',
  'balance.end.changes': '{share} of the nitrogen leaves with water changes',
  'balance.end.plants': '{share} goes into plants',
  'balance.end.stays': '{share} stays in the water and rises',
  'balance.change':
    'Nitrate is held at {target} as NO3 by changing {change} of the water a week; it is {now} now. That is against water without nitrate.',
  'balance.change.often':
    'To hold nitrate at {target} as NO3, {change} of the water would have to be changed a week, in several goes; it is {now} now. Less feed or more plants do it sooner.',
  'balance.change.none':
    'Plants alone hold nitrate below {target} as NO3; water changes ({now} a week now) are not needed for it.',
  'balance.lime.none': 'No alkalinity is used: plants give back as much as the bacteria take.',
  'balance.lime':
    'Bacteria use {used} of alkalinity (as CaCO3) a week, {falls} of the tank’s; with the water changes it settles from {from} at {settles}. Without any it is gone after {lasts}.',
  'balance.lime.runs-out':
    'Bacteria use {used} of alkalinity (as CaCO3) a week, {falls} of the tank’s, and the water changes do not bring as much: it runs out, without any after {lasts}; then pH falls and the bacteria stop.',
  'balance.oxygen':
    'Oxygen used: {used} (fish {fish}, bacteria {bacteria}, rotting dirt {dirt}). By their laws surface, falling water and bubbles bring {brought} at the stated {stated} of saturation; at {settles} they would bring what is used. The surface’s law is good to a factor of two.',
  'balance.stop.own':
    'If this filter stops ({share} of the ammonia), the tank goes to ammonia {ammonia} and nitrite {nitrite} with the bacteria that the others have, and to {laterAmmonia} and {laterNitrite} once they have grown.',
  'balance.stop.other':
    'If “{name}” stops ({share} of the ammonia), the tank goes to ammonia {ammonia} and nitrite {nitrite} with the bacteria that the others have, and to {laterAmmonia} and {laterNitrite} once they have grown.',
  'balance.stop.time':
    'How long that takes is told by the run in time. A filter that has stood still for more than half an hour is rinsed before it runs again: its water must not go to the animals.',
  'balance.side-by-side':
    'Before this filter is taken away for another, run the two side by side for {time}: until the new one has nine tenths of its bacteria (recovery time from memory).',
};
