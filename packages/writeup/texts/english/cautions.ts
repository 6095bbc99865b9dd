/** Cautions, each said once where its danger is. */
export const cautionSentences: Readonly<Record<string, string>> = {
  'caution.mains':
    'Before a hand goes into the water, pull the plugs of everything in the tank; a switch is not enough. All of it belongs behind a residual-current device, tested every month. Local codes and a licensed electrician decide on wiring; whatever has tripped the device stays unplugged.',
  'caution.cable':
    'Let each cable hang in a loop that is lower than its socket, so that water drips off there. A motor that is sealed is not opened, and a damaged cable is not mended: that filter is scrap.',
  'caution.air-line':
    'The air pump stands above the surface of the tank, or its line has a check valve: else water runs back through the line into it, and to the mains, when it stops.',
  'caution.siphon':
    'Close the taps and lift the hose ends above the surface of the tank before a hose comes off: else the tank runs out through it, down to the intake. A check valve alone is no guard.',
  'caution.siphon-break':
    'See that a small hole in the outlet just below the water line is open: it breaks the siphon when the pump stops.',
  'caution.sump':
    'When the pump stops, water runs down until it breaks off: never fill the box higher than leaves room for that, and keep the overflow of the tank and the emergency drain free. A check valve alone is no guard.',
  'caution.overflow':
    'Keep the overflow lip free, whatever is packed: when media clog, the water leaves there and not over the rim.',
  'caution.weight': 'Full of water it is heavy and slips: two hands, a dry floor, a tray under it.',
  'caution.skin':
    'Cover cuts and wear waterproof gloves: water of aquaria carries germs that enter through broken skin. A sore that does not heal within weeks is for a doctor, who should hear of the tank. Never start a siphon by mouth.',
  'caution.blade': 'Cut away from the hand, on a board, with a cut-resistant glove on the other hand.',
  'caution.foam':
    'New foam, floss and sheet must be free of biocides, flame retardants and scent; rinse them until the water runs clear.',
  'caution.seal':
    'Wipe the main seal and its groove clean; grease it thinly with silicone grease, never with petroleum jelly; close the clips evenly and by hand.',
  'caution.disinfect':
    'Between the filters of two owners: own buckets for each, every part but the media disinfected, rinsed free of it and dried. Never mix bleach with acid or with ammonia; gloves and goggles. Media of a tank with sick animals go into the bin.',
  'caution.all-at-once':
    'Never replace or scrub all media at once: most of the bacteria live on them. A third to a half at a time, weeks apart, and never on the day of a large water change.',
  'caution.stopped':
    'Stopped and closed, its water loses its oxygen within hours, sooner when it is dirty. Up to half an hour: let it run on. Up to two hours: the first litres into a bucket. Longer: do not start it into the tank; open it, rinse the media in tank water, and test ammonia and nitrite for a week (common practice, no source).',
  'caution.stopped-open':
    'After a power cut of more than two hours, rinse the media in tank water before it runs again, and test ammonia and nitrite for a week (common practice, no source).',
};
