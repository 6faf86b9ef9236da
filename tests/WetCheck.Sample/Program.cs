using WetCheck;

// An invented room, held against the built-in book: what is to fix, one question answered, the page for its owner.
const string Job = """
    job: Hazel, invented
    method: liner under mortar
    units: inches
    stage: flood test
    plumbing code: IRC 2021
    curb: { height: 5, cap adds: plan 1 }
    liner: { left: 3-1/4, back: 3-1/4 }
    """;
var now = new DateTimeOffset(2026, 11, 25, 16, 5, 0, TimeSpan.Zero);

var room = Room.Read(Book.BuiltIn, new RoomTexts("hazel.job.yaml", Job), Console.Error.WriteLine);
Console.Write(room.Screen("en", now));

var question = room.AskedBy("liner.right", "en")[0];
question.Lines.ToList().ForEach(Console.WriteLine);
foreach (var line in room.LinesFor(question, "2-3/8", now, by: null, Console.Error.WriteLine))
{
    room.Keep(line); // and into hazel.log.jsonl
}

Console.WriteLine($"{room.Name}: {room.State}");
Console.Write(room.Why("214-D", "en", now));
Console.Write(room.List(ListForm.Markdown, ForWhom.Owner, "en", now));
