/** How a tank's water goes over the coming days. */
export const tankSentences: Readonly<Record<string, string>> = {
  'tank.start.new': 'The tank starts without bacteria but those that drift in.',
  'tank.start.seeded': 'The tank starts with {share} of the bacteria of a ripe filter.',
  'tank.start.mature': 'The filter is ripe at the start: it has run for a year as the job says.',
  'tank.peaks':
    'Ammonia (TAN) is at most {ammonia} of nitrogen, on day {ammoniaDay}, and nitrite at most {nitrite}, on day {nitriteDay}.',
  'tank.back': 'Both are back under target for good after {after} (within a factor of two).',
  'tank.under': 'Both stay under target.',
  'tank.back.neither': 'Neither is under target at the end of {days} days.',
  'tank.back.no-ammonia': 'Ammonia is not under target at the end of {days} days.',
  'tank.back.no-nitrite': 'Nitrite is not under target at the end of {days} days.',
  'tank.toxic':
    'Un-ionized ammonia is above {limit} for {above} in all, at most {peak}: that harms fish. Test, change water and feed less, or keep no fish in it yet.',
  'tank.not-toxic': 'Un-ionized ammonia stays at or under {limit}: at most {peak}.',
  'tank.oxygen': 'Oxygen in the tank is at least {least}, on day {day}.',
  'tank.oxygen.low': 'Oxygen in the tank falls to {least} on day {day}: fish gasp. Bring in more air.',
  'tank.alkalinity':
    'Alkalinity falls to {least} as CaCO3 on day {day}: bacteria stop for want of it, and the pH falls.',
  'tank.walls': 'Glass and ground oxidise {share} of the ammonia at the end (within a factor of two).',
  'tank.stopped':
    'If the pump stops, the oxygen of the {water} of water in the filter lasts {low} to {high}, reckoned and never measured. Unplug it, and after {within} do not let it run again as it is: its water must not go back into the tank. Pour it away, rinse the media in tank water, then start.',
  'tank.stopped.clean':
    'Nothing in the filter uses oxygen yet. Even so, unplug a stopped one, and rinse it before it runs again.',
  'tank.doubt':
    'How fast bacteria grow is known within a factor of 1.6, and how many there are at the start within ten: days are good to a factor of two. A drop test in the tank goes before any of this.',
};
