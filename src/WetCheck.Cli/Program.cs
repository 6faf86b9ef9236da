using WetCheck.Cli;

var terminal = Terminal.Real();
try
{
    return (int)CommandLine.Run(args, terminal);
}
catch (Exception fault)
{
    terminal.Err.WriteLine("WetCheck stopped at something it should be able to take. The job file is as it was; what "
        + "was Kept is in its log.");
    terminal.Err.WriteLine(fault);
    return (int)ExitCode.Unreadable;
}
