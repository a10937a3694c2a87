namespace ShopPlanner.Web.Tests.Texts;

/// <summary>Words that people read no more, each with what is said instead.</summary>
internal static class Glossary
{
    /// <summary>Folders whose texts are read, below the repository.</summary>
    public static readonly string[] Folders = ["src", "wwwroot-assets/designs", "wwwroot-assets/demo"];

    /// <summary>Texts that hold such words and are not read by people: reasons as ledgers keep them, names of styles, units as
    /// tables name them and people type them.</summary>
    public static readonly string[] Unread = ["measured anew", "centre", "metre", "metres", "millimetres", "litre", "litres"];

    /// <summary>Phrases that no text holds.</summary>
    public static readonly (string Old, string Now)[] Phrases =
    [
        ("in the shop now", "Shop"),
        ("opening page", "Home"),
        ("write a piece down", "Add a piece"),
        ("put away", "Archive"),
        ("begin a project", "New project"),
        ("name, unit, state", "Edit project"),
        ("name, unit, cuts", "Edit store"),
        ("read a CSV", "Import CSV"),
        ("save as CSV", "Export CSV"),
        ("they may be off by", "Store cut tolerance"),
        ("first cuts it makes", "Free cuts per sheet"),
        ("look for better for at most", "Keep searching for up to"),
        ("it ends sooner", "Stops early"),
        ("to spend", "Total to buy"),
        ("how good", "the answer itself"),
        ("no cheaper way to buy", "Proven cheapest"),
        ("cheaper is possible", "Could be up to … cheaper"),
        ("pieces for the bin", "offcuts to keep"),
        ("withdrawn", "Canceled"),
        ("take it up again", "Restore"),
        ("find no place", "not in this plan"),
        ("found no place", "not in this plan"),
        ("for the broom", "scrap"),
        ("falls off free", "the strip falls away"),
        ("what to cut?", "Ready to cut"),
        ("all cuts are made", "All cuts done"),
        ("bought and cut twice", "already has a plan. Replace it?"),
        ("that is not cut already", "Everything here is already cut"),
        ("take it along", "Print or share"),
        ("as a file", "… (JSON)"),
        ("if the store cuts for you", "Store cutting list"),
        ("is like that", "Nothing matches"),
        ("sizes without a sign", "Inches unless you add a unit"),
        ("empty for any", "Blank = no limit"),
        ("copies of all this", "Backups"),
        ("make a copy now", "Back up now"),
        ("may turn", "Can rotate"),
        ("be seen to bend", "will sag visibly over time"),
        ("as the design has it", "Reset"),
        ("one more material", "Add a material"),
        ("turn it", "3D"),
        ("in the round", "in 3D"),
        ("leave off comparing", "Stop comparing"),
        ("keep and pass on", "Save and share"),
        ("stand twice", "Duplicate"),
        ("stands twice", "Duplicate"),
        ("take other letters", "Give my own rows new letters"),
        ("wants a look", "check this"),
        ("there stands", "it is now"),
        ("stands there now", "it is now"),
        ("still wanted", "Needs"),
        ("is wanted", "needed"),
        ("are wanted", "needed"),
        ("may be left out", "Optional"),
        ("where left out", "Blank = …"),
        ("not said", "Not specified"),
        ("waiting in all", "Total drying time"),
        ("in all:", "total"),
        ("the line to the shop", "Connection lost"),
        ("no known material", "isn't in your materials list"),
        ("was taken out", "removed"),
        ("take out again", "Restore"),
        ("will not do", "Fix this"),
        ("what it comes to", "Results"),
        ("look it up before", "check before you rely on it"),
        ("read there", "Source: …"),
        ("from memory of", "unverified"),
        ("anew", "again"),
        ("reckoned", "checked"),
        ("reckoning", "figure"),
        ("home-made", "homemade"),
        ("parted by", "separated by"),
        ("listened on", "in use, or not allowed"),
        ("practice piece", "test piece"),
    ];

    /// <summary>Texts that stand nowhere alone.</summary>
    public static readonly (string Old, string Now)[] Alone =
    [
        ("Leave it", "Cancel"),
        ("Edge of a sheet", "Edge trim"),
        ("Watch", "Check"),
        ("Mind", "Safety"),
        ("Holds", "OK"),
        ("Gives", "You get"),
        ("Seen", "Price checked"),
        ("Letters", "Label prefix"),
        ("Together", "Total"),
        ("Left over", "Leftovers"),
        ("Workings", "Shop math"),
        ("Withdraw", "Cancel plan"),
        ("Cut made", "Done"),
        ("Not made", "Undo"),
        ("Make parts", "Make parts list"),
        ("Take out", "Remove"),
        ("Put in", "Add"),
        ("Turn it", "3D"),
        ("As given", "As entered"),
    ];

    /// <summary>Spellings beside inches and dollars.</summary>
    public static readonly (string Old, string Now)[] Spellings =
    [
        ("colour", "color"),
        ("centre", "center"),
        ("centres", "centers"),
        ("centred", "centered"),
        ("litre", "liter"),
        ("litres", "liters"),
        ("metre", "meter"),
        ("metres", "meters"),
        ("millimetres", "millimeters"),
        ("grey", "gray"),
        ("dowelled", "doweled"),
        ("labelled", "labeled"),
        ("cancelled", "canceled"),
        ("towards", "toward"),
        ("afterwards", "afterward"),
    ];
}
