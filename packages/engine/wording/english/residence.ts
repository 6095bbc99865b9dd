/** How long water stays in a filter, and what a dye showed of it. */
export const residenceSentences: Readonly<Record<string, string>> = {
  'residence.times':
    'From the tank and back to it, water is under way for {mean} on average: a tenth of it is through after {tenth}, half after {half}, nine tenths after {nine} (Morrill index {index}; 1 is plug flow, 22 one mixed vessel).',
  'residence.times.beyond-mixed':
    'From the tank and back to it, water is under way for {mean} on average: a tenth of it is through after {tenth}, half after {half}, nine tenths after {nine} (Morrill index {index}; 1 is plug flow, 22 one mixed vessel; more says that some of the water goes a much shorter way than the rest).',
  'residence.volume': 'It holds {volume} of water; {dead}. Only a dye test shows corners that stand still.',
  'residence.volume.hoses':
    'It holds {volume} of water, {hoses} of it in the hoses; {dead}. Only a dye test shows corners that stand still.',
  'residence.dead': 'no water passes through {share} of it',
  'residence.dead.none': 'water passes through all of it by the map',
  'residence.basis':
    'Clean media. Spaces between chambers are taken as mixed, beds as tanks in series by their dispersion (within a factor of 2), hoses and slots as passed in the order in which the water came; water inside the pores of pieces and in the pump is not counted.',
  'dye.found':
    'dye, {state}: a tenth after {tenth}; half after {half}; nine tenths after {nine}; mean {mean}; Morrill index {index} ± {doubt}.',
  'dye.state.as-found': 'as found',
  'dye.state.clean-empty': 'clean, without media',
  'dye.state.cleaned-original': 'cleaned, packed as before',
  'dye.state.as-left': 'as left',
  'dye.time': '{measured} ± {doubt}',
  'dye.time.and-map': '{measured} ± {doubt}, by the map {computed}',
  'dye.standing': 'Mean against volume over flow leaves {share} of the water standing.',
  'dye.cut-off':
    'The readings end before the colour is gone, so mean and nine tenths are too small: read longer.',
  'dye.caution':
    'Never put dye into an occupied tank without need. Carbon adsorbs it, zeolite exchanges salt, floss holds colour: with these in the filter the curve comes late and small.',
};
