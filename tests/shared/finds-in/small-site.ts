/** An invented site of two pits, one find of the file itself and two of a table beside it. */
export const SMALL_SITE = `# An INVENTED site.
id: gravel-end
name: Gravel End
code: GRE
status: invented
story: A pond is dug.   # a note of the lead's own
organisation: Nobody (invented)
period: {label: Late Neolithic, from-bce: 2900, to-bce: 2400, status: FM, note: a stand-in}
soils: gravel
pits:
  # the first we opened
  - id: P1
    cut: 100
    centre: {east-m: 2, north-m: 3.5}
    top-level-m-od: 8.5
    length-mm: 1000
    width-mm: 900
    depth-mm: 300
    profile: bowl
    fills:
      - {context: 101, description: silt, thickness-mm: 150}   # upper
      - context: 102
        description: charcoal silt
        thickness-mm: 150
    finds:
      - small-find: 1
        context: 101   # near the edge
        object-type: flake
        material: flint
        length-mm: 52
        width-mm: 38
        thickness-mm: 9
        state: whole
        made-by: flaked
        used-for: waste-from-knapping
        age: late-neolithic
        role: evidence
  - id: P2
    cut: 200
    centre: {east-m: 6.25, north-m: 1}
    top-level-m-od: 8.4
    length-mm: 1000
    width-mm: 900
    depth-mm: 300
    profile: steep-sided
    fills:
      - {context: 201, description: silt, thickness-mm: 300}
    # nothing more was found
soils-note-kept-out: false
`.replace('soils-note-kept-out: false\n', '');

export const SMALL_TABLE = `Small find,pit,context,object type,material,state,made by,used for,age,role,length mm,width mm,thickness mm,note
2,P2,201,core,flint,whole,flaked,making-flakes,late-neolithic,evidence,64,55,43,"two platforms, worn"
3,P2,201,flake,flint,broken,flaked,waste-from-knapping,late-neolithic,evidence,30,20,5,
`;
