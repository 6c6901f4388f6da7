/** Plain short words, easily told apart when said aloud, each once. Four of them make a passphrase of some 36 bits. */
export const PASSPHRASE_WORDS: readonly string[] = `
acorn actor album alarm alley amber anchor angle ankle apple apron arch arrow atlas attic aunt autumn
badge bagel baker bamboo banjo barn barrel basil basin basket bath beach beacon bead beam bean bear beard beaver bedrock
beetle bell belt bench berry bicycle birch bird biscuit bishop blanket blossom bonfire bonnet book boot border bottle boulder bowl
bracket branch brass bread brick bridge broom brush bubble bucket buckle bugle bundle bush butter button
cabin cable cactus cake camel camp canal candle canoe canvas cape carpet carrot cart castle cedar cellar chain chalk chapel
cheese cherry chess chest chimney choir cider circle clamp clay clerk cliff cloak clock cloud clover coach cobra coffee comb
comet compass copper coral cork corner cotton cousin cradle crane crayon cricket crown crumb cuckoo cup curtain cushion
daisy dancer dawn deck deer desert desk diamond dinner dish doctor dolphin donkey door dragon drawer dress drill drum duck dune
eagle earth easel echo elbow elephant elm ember engine envelope evening
fabric falcon farm feather fence fern ferry fiddle field finch finger fire flag flame flask flock flour flute fog forest fork
fossil fountain fox frame friend frog frost funnel
galaxy garden garlic gate gecko giant ginger giraffe glacier glass glove glue goat gold goose grape grass gravel guitar gull
hammer hammock harbour harp hawk hazel heart hedge helmet herb hill hinge honey hood hook horn horse hotel house hut
igloo index ink insect iron island ivory ivy
jacket jam jar jasmine jewel jigsaw jockey journal judge jug jungle juniper
kayak kettle keyhole king kitchen kite kitten kiwi knuckle
ladder lagoon lake lamp lantern lark laundry lavender lawn leaf lemon lentil letter level library lime linen lion lizard lobster
locket loft lotus lunch lute
magnet magpie mango mantle map maple marble market mask meadow medal melon melody metal mill minute mirror mitten moon moss moth
motor mountain mouse mud muffin museum mushroom mustard
napkin narrow needle nephew nest nettle nickel night noodle north nose notebook nursery nutmeg
oak oasis oat ocean olive onion opera orange orchard organ otter oven owl oxygen oyster
paddle palace palm pancake panda panther paper parcel park parrot parsley pasta path pavement peach pear pebble pedal pelican pen
pencil penguin pepper petal piano pickle picnic pigeon pillar pillow pilot pine pipe planet plank plate plum pocket poem pond pony
poppy porch potato powder prism prune pudding puffin pulley pump puppet purse puzzle pyramid
quarry quarter queen quill quilt
rabbit radio radish raft rail rain raisin ranch raven razor ribbon rice ring river road robin rocket roof rope rose rubber ruby
saddle saffron sailor salad salmon salt sand sandal satin saucer saw scarf school scissors scooter seal season seed shadow shawl
shed sheep shelf shell shepherd shield ship shirt shore shovel silk silver sister sketch skirt sled slipper smoke snail snow soap
sock sofa soldier spade spark spider spinach sponge spoon spring squirrel stable stamp star station statue stone stool storm stove
straw street string sugar summer sunset swan swing sword syrup
table tailor tambourine target teapot temple tent thimble thistle thread throne thumb thunder ticket tiger timber tinsel toast
tomato torch tortoise towel tower tractor train tray treasure tree trumpet trunk tulip tunnel turnip turtle twig twin
umbrella uncle unicorn uniform
valley vanilla vase velvet verse village vine vinegar violet violin voice volcano voyage
waffle wagon waiter walnut walrus waltz water wave wax weasel weaver wheat wheel whistle widow willow window winter wizard wolf
wool wreath yard yarn yellow yogurt zebra zipper
`
  .trim()
  .split(/\s+/);
