/** What hoses, heights and outlets mean for the room and the tank. */
export const siteSentences: Readonly<Record<string, string>> = {
  'site.leaks.water-out': 'lets water out',
  'site.leaks.air-in': 'draws air in',
  'site.leaks.neither': 'neither drips nor draws',
  'site.cause.intake-hose-off': 'Intake hose off at the filter',
  'site.cause.outlet-hose-off-running': 'Outlet hose off, pump running',
  'site.cause.outlet-hose-off-stopped': 'Outlet hose off, pump standing',
  'site.cause.power-fails': 'Power fails',
  'site.ends.hole': 'down to the air hole',
  'site.ends.mouth': 'down to the mouth of the hose',
  'site.ends.edge': 'down to the edge that the tank runs over',
  'site.spill': '{cause}: {volume} leave the tank, {fall} {end}.',
  'site.spill.room': '{cause}: {volume} leave the tank, {fall} {end}; sump or tray take up {room}.',
  'site.spill.timed': '{cause}: {volume} leave the tank, {fall} {end}, at first {flow}, so about {time}.',
  'site.spill.timed.room':
    '{cause}: {volume} leave the tank, {fall} {end}, at first {flow}, so about {time}; sump or tray take up {room}.',
  'site.outlet': 'The outlet',
  'site.outlet.of-several': 'Outlet {number}',
  'site.stands.assumed': '{stands} (known in the trade, not looked up)',
  'site.jet.slow':
    '{outlet} sends a jet of {bore} into the tank at {speed}, no faster than the {stands} that weak swimmers stand for long.',
  'site.jet':
    '{outlet} sends a jet of {bore} into the tank at {speed}; its middle is faster than the {stands} that weak swimmers stand for long over {reach}, in open water (a wall or the surface beside it carries it farther).',
  'site.edge.walls': 'walls of the box',
  'site.room': 'While the pump runs, the box has room for {room} more.',
  'site.room.left':
    'While the pump runs, the box has room for {room} more; once all has come down, for {left}.',
  'site.room.over':
    'While the pump runs, the box has room for {room} more; what comes down is {over} more than that, and runs onto the floor.',
};
