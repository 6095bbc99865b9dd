/** The ranges of a sheet's figures, and what makes them. */
export const rangeSentences: Readonly<Record<string, string>> = {
  'heading.ranges': 'How sure the figures are',
  'table.ranges':
    'Ranges by {draws} draws of all that is not sure: eight of ten filters of which no more is known than of this one lie between low and high',
  'column.figure': 'figure',
  'column.low': 'low',
  'column.middle': 'middle',
  'column.high': 'high',
  'range.flow': 'flow, clean',
  'range.flow-end': 'flow when it wants cleaning',
  'range.interval': 'until it wants cleaning',
  'range.feed': 'dry feed that it carries, clean',
  'range.feed-end': 'dry feed when it wants cleaning',
  'range.served': 'tank at a normal stock, clean',
  'range.served-day': 'tank at a normal stock, {day} after every bed was cleaned',
  'range.served-end': 'tank at a normal stock when it wants cleaning',
  'range.oxygen': 'oxygen behind the filter then',
  'table.range-makers': 'What makes the range of the tank that it serves when it wants cleaning',
  'column.unsure': 'not sure',
};
