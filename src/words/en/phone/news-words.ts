/** What has changed in the app, the latest first. */
export const newsWords = {
  title: 'What is new',
  releases: [
    {
      date: '30 November 2026',
      says: [
        'Measures of the wearer, each with where and how it is taken. Fit: body and ease against what the pieces give; what an opening passes; where a vent begins.',
        'Pieces to cut, whose edges take what their works need; a change shared over seams and darts; two edges matched from notch to notch.',
        'What to have at hand, from the works themselves; a garment on paper, its steps to tick; a garment handed on as a file or a link; a backup sent to another app.',
        'At home: steps passed over, made before the app knew, made together; works moved in their order; a note and a photo at a step.',
        'Every calculation is found by its name or by what it is for.',
        'The pieces of a garment are laid on its cloth: a lay is looked for, kept as it is found, and followed piece by piece with a tape; the length to buy comes from it.',
        'New: thread, shrinkage, bias strips, gathers and frills, elastic and its casing, drawstrings, tucks, circular skirts, flounces and gores, binding and piping. Pleats may begin with half a space, leave a part flat, and be fitted at other levels.',
        'New: plackets and zips, pockets, closings in groups, loops and laps, one dart and darts between two girths, waistbands and cuffs, collars, stripes and checks, flare let in and another length, a hem levelled from the floor, holes round an outline, lengths along a curve.',
        'The length of cloth to buy is the largest thing of a lay, and how it fell is drawn. In a photo numbers across the tape are read in more kinds of print, and a picture is looked at closer where it gives nothing as a whole.',
        'A press that was refused is never made behind that; what storage was slow to keep, and has kept, is not said to be missing; an open work says what isn’t kept.',
        'What must be no less, or no more, stands on the key rounded to that side, as on its page. Holes of a strip and marks of an edge follow those of another; steps move past those of other works.',
        'A garment’s sheet has what to have at hand on it, and is shorter.',
        'New: a slanted hem, also from the cloth that is there and as a pair; tiers of frills; gathers in zones; a header above a cord; buttonholes that follow their buttons; a curve walked by tape. An invented skirt and an invented shirt to try, beside the waistcoat.',
        'Pieces of a lay may have shapes of their own: four sides, point by point, or from a file. The length found can be taken by other works; a lay can be put on paper, and follows the pattern of its cloth.',
        'Edges with a notch too many are matched once it is said which is left over. One side of a work can be moved in the order by itself.',
        'In a photo, a tape is followed round its bends, and looked at where it is touched; single digits are read by the app itself where the reader of whole numbers says nothing. Where the lines of two tapes meet, a tape is read on its own.',
        'What lies below all that is seen is drawn once typing rests. A press just after another address came is not lost. Where storage is slow to wake, settings, garments and the list come without a press, and no setting is written over another.',
        'Pleats of a strip that is there; topstitching beside a plain seam; notches left over are a row to sew past; a bound seam by itself asks for its cloth. A number of an open work and of the sheet is rounded to its step’s side.',
        'A field that takes the length of a lay says when that doesn’t hold any more, and the lay says when a shape isn’t the piece’s size. More drawings are read.',
        'In a photo the app’s own digits are tried first; numbers between a line and the next one, or on lines that fan out, are asked about.',
        'With large letters no place of a mark is cut short, and nothing lies beyond the side of a narrow phone. Long names go on below themselves.',
        'Lines to stitch for a casing, and pieces cut to a pattern, are rounded to the safe side; an opened work shows the same number as its key. Bow and skew of cloth, in per cent. What cloth gives in bias by its area stands beside what whole strips come to.',
        'In a photo, numbers beyond unclear ones are read; where lines go on below 1, it is asked which ten it is.',
      ],
    },
    {
      date: '29 November 2026',
      says: [
        'A garment knows its numbers: fields take them from each other, and what is made stays as it was made. With one open, the app starts at its next number, large, with Made under the thumb; before a cut it shows what to check.',
        'A work opens on its drawing, whose numbers are its fields. What is made otherwise asks how it goes on, each way with its numbers.',
        'What was kept before is on its garment as it was; the calculations by themselves are under “All calculations”.',
        'Numbers that differ from before: lace is cut by the greater of geometry and what is published; folds are reckoned by what they enclose; buttonholes and clips are rounded to the safe side on the tape.',
        'A crossing strip’s answer begins with the worst that is true of it, and says which way to move.',
        'Halves, quarters and eighths of an edge. A hem can be given as all there is.',
        'What is unusual is asked about at its field. What an address holds and the app doesn’t know is said.',
        'What was made is kept where it was made. A backup tells when it has been damaged.',
      ],
    },
    {
      date: '26 November 2026',
      says: [
        'The live picture holds every scale of a tape; Back leads one step at a time.',
        'The new holes of a crossing can be listed, followed and kept.',
        'On paper, holes to punch are told from those made.',
      ],
    },
    {
      date: '25 November 2026',
      says: [
        'The first version: lengths, closures, hems, seams, edging, lacing, garments, paper and glass, and reading a tape.',
      ],
    },
  ],
};
