/** What is said of a maker's claims. */
export const claimSentences: Readonly<Record<string, string>> = {
  'claim.no-quantity': 'No quantity was found in it.',
  'claim.nothing-to-hold': 'There is nothing measured or computed to hold it against.',
  'claim.unit-unclear': '“{text}” may be meant in more than one unit.',
  'claim.number-unclear': '“{text}” may have a decimal sign or a sign for thousands.',
  'claim.unclear': '“{text}” cannot be read as one quantity.',

  'claim.verbatim': '“{text}”',
  'claim.quoted': '"{text}"',
  'claim.quoted-before': '"{text}" (said before)',
  'claim.pair.same': '{first} and {second} are the same within rounding.',
  'claim.pair.fits': '{first} and {second} fit if {meant} is meant; the statement does not say so.',
  'claim.pair.differs': '{first} and {second} are not the same: the first is {ratio} of the second.',
  'claim.pair.differs-by':
    '{first} and {second} are not the same: the first is {ratio} of the second. {slip}',
  'claim.pair.unclear': '{first} and {second} cannot be held against each other.',
  'slip.imperial-gallon': 'The number fits the imperial gallon.',
  'slip.us-gallon': 'The number fits the US gallon.',
  'slip.swapped-digits': 'Two digits seem to have changed places.',
  'slip.factor-ten': 'A digit or a nought seems to have been lost or added.',
  'slip.factor-sixty': 'Minutes and hours seem to have been exchanged.',
  'slip.not-converted': 'The number was not converted at all.',
  'slip.rounded-factor': 'They are half a per cent apart or less, as a rounded factor leaves them.',
  'slip.digit-slip': 'One digit seems to be wrong.',
  'slip.unrelated': 'No single slip explains it.',

  'claim.zero': 'Nothing can be held against a claim of 0.',
  'claim.share': '{ratio} of the claim',
  'claim.within-doubt': '{detail} That is within what our own figure may be off, {doubt} either way.',
  'claim.flow': 'At the tank it is {ours}, {share}.',
  'claim.flow-and-rated': 'At the tank it is {ours}, {share}. The pump alone, at no head, gives {rated}.',
  'claim.pump-flow': 'The pump alone, at no head, gives {ours}, {share}.',
  'claim.pump-not-measured': 'The pump alone was not measured.',
  'claim.is-the-rating':
    "This is the statement that the job takes as the pump's rated flow, so it cannot be held against that.",
  'claim.not-independent':
    'The job takes this very statement for its own figure, and nothing was measured: there is nothing independent to hold it against.',
  'claim.at-the-tank':
    '{detail} At the tank, after the head of hoses, lift and media, it is {flow}, {ratio} of that.',
  'claim.tank':
    'At a normal stock it serves {normal}, {share}; at a light one {light}, at a heavy one {heavy}.',
  'claim.above-range': 'above the range, {ratio} of its upper end',
  'claim.inside-range': 'inside the range, {percent} % of the way up',
  'claim.below-range': 'below the range, {ratio} of its lower end',
  'claim.power-measured': 'Measured at the plug it is {ours}, {share}.',
  'claim.power': 'We reckon with {ours}, {share}.',
  'claim.head': 'Its flow stops at {ours}, {share}.',
  'claim.media': 'It holds {ours} of media, {share}.',
  'claim.area-per-mass':
    'An area per mass is not an area in the filter. Such an area is found by gas adsorption and lies in pores that are too fine for bacteria to enter; they live on the outer surface.',
  'claim.area-usable': 'It is within what the outer surface of a medium can offer (3 m2/L).',
  'claim.area-by-gas':
    'It is {times} times the 3 m2/L that bacteria can use at most. Such an area is found by gas adsorption and lies in pores that are too fine for bacteria to enter; they live on the outer surface.',
  'claim.either': '"{text}" does not say which unit is meant. {meanings}',
  'claim.meaning': 'In {unit} it says {claimed}: {detail}',
};
