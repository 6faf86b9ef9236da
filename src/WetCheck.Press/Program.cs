using WetCheck.Intake;
using WetCheck.Press;
using WetCheck.Pressed;

// Run by the build: the folder of the rules, then where the book and its cases go.
if (args is not [var folder, var bookFile, var casesFile])
{
    Console.Error.WriteLine("WetCheck.Press RULES BOOK CASES");
    return 2;
}

var (files, problems) = RuleFolder.Read(folder);
var (book, cases, ofBook) = problems.Count > 0 ? (null, [], problems) : RuleBookReader.Read(files);
if (book is null)
{
    foreach (var problem in ofBook)
    {
        Console.Out.WriteLine(BuildError.Line(folder, problem));
    }

    return 1;
}

File.WriteAllBytes(bookFile, PressedBook.Write(book));
File.WriteAllBytes(casesFile, PressedBook.WriteCases(cases));
return 0;
