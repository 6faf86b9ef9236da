namespace WetCheck.Cli.Help;

/// <summary>What to type, by command. A test runs each in a folder that holds the job juniper.</summary>
internal static class Examples
{
    /// <summary>How it begins: start a job, check it, print what is to do.</summary>
    public static readonly string[] First =
    [
        "Start:  wetcheck job new NAME",
        "Check:  wetcheck walk NAME",
        "Print:  wetcheck punch NAME -o NAME.html",
    ];

    public static readonly IReadOnlyDictionary<string, string[]> ByCommand = new Dictionary<string, string[]>
    {
        ["wetcheck"] = ["wetcheck walk juniper", "wetcheck why juniper 214-D", "wetcheck punch juniper -o juniper.html"],
        ["walk"] =
        [
            "wetcheck walk                                the one job of this folder",
            "wetcheck walk juniper                        juniper.job.yaml of this folder",
            "wetcheck walk juniper --stage \"before bed\"   as if at another stop",
            "wetcheck walk juniper --if \"curb.height: 5\"  as if this were read",
            "wetcheck walk juniper --format json",
        ],
        ["why"] =
        [
            "wetcheck why juniper 214-D                   one line of the list",
            "wetcheck why liner/turn-up                   one rule",
            "wetcheck why 214                             the same, by number",
        ],
        ["look"] =
        [
            "wetcheck look juniper                        asks what is owed; Enter skips",
            "wetcheck look juniper 214-D                  asks for one line of the list",
            "wetcheck look juniper 214-D 3                keeps the answer",
            "wetcheck look juniper liner.right 3          the same, by its line",
        ],
        ["punch"] =
        [
            "wetcheck punch juniper                       text for a message",
            "wetcheck punch juniper -o juniper.html       a page to print",
            "wetcheck punch juniper --lang es             in Spanish, a draft",
            "wetcheck punch juniper --for owner           for the owner, in plain words",
        ],
        ["pan"] =
        [
            "wetcheck pan juniper                         the falls of its floor",
            "wetcheck pan juniper --if \"shower.drain at: 30, 14\"   as if it stood there",
            "wetcheck pan juniper --sheet heights         what stands where, where water goes",
            "wetcheck pan juniper --format json",
        ],
        ["draw"] =
        [
            "wetcheck draw juniper -o juniper.svg         its floor from above",
        ],
        ["tearout"] =
        [
            "wetcheck tearout juniper                     what accounts for what was found",
            "wetcheck tearout juniper --sheet tests       tests that open nothing, in order",
            "wetcheck why juniper M-01                    one cause, with the lines it stands on",
        ],
        ["rules"] = ["wetcheck rules", "wetcheck rules --format md"],
        ["code"] = ["wetcheck rules code", "wetcheck rules code --compare IRC UPC"],
        ["prove"] = ["wetcheck rules prove", "wetcheck rules prove liner/turn-up", "wetcheck rules prove liner"],
        ["rules new"] = ["wetcheck rules new local/curb-width"],
        ["job"] = ["wetcheck job new larkspur", "wetcheck job sample"],
        ["new"] =
        [
            "wetcheck job new larkspur                    its file, and a sheet to write on",
            "wetcheck job new larkspur --lang es          asked and written in Spanish",
        ],
        ["sample"] = ["wetcheck job sample                          juniper.job.yaml, invented"],
        ["schema"] = ["wetcheck job schema"],
    };
}
