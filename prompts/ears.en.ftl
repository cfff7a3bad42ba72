# Why a recogniser that the owner has set up could not hear a voice note.

ear-key = The transcription service does not accept the key ({ $why }). The owner has to look at it. Type it instead.
ear-busy = The transcription service takes no more notes for now ({ $why }). Say it again later, or type it.
ear-refused = The transcription service failed ({ $why }). Type it instead; the owner can look into it.
ear-slow = The transcription service did not answer within { $seconds } seconds. Say it again later, or type it.
ear-unreachable = The transcription service cannot be reached ({ $why }). Say it again later, or type it.
ear-answer = The transcription service gave no usable answer ({ $why }). Type it instead; the owner can look into it.
ear-package-missing = The package sherpa-onnx-node cannot be loaded ({ $why }). Run: npm install sherpa-onnx-node
ear-model-folder = The folder { $folder } for the speech model is not there or cannot be read ({ $why }). Set the folder as the README says.
ear-model-files = In { $folder } is no speech model that can be used; missing: { $missing }. Download one as the README says.
ear-model-unknown = The speech model in { $folder } is of no kind that is known here. Download one that the README names.
ear-model-broken = The speech model in { $folder } cannot be loaded. Download it again. Until then, type it.
ear-died = The recogniser broke off on that note. Type it instead.
